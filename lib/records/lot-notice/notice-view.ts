import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import { type LotRef, lotOf } from './lot-of';

const twoNames = { select: { nameEn: true, nameEs: true } } as const;

export const noticeInclude = {
  spawnLot: { select: { code: true, species: twoNames } },
  substrateLot: { select: { code: true, material: twoNames } },
} satisfies Prisma.LotNoticeInclude;

type Row = Prisma.LotNoticeGetPayload<{ include: typeof noticeInclude }>;

/** A notice as everybody it was told to sees it. */
export type NoticeView = LotRef & {
  readonly id: string;
  readonly revision: number;
  readonly lotCode: string;
  /** Species of the spawn, or the material. */
  readonly what: { readonly en: string; readonly es: string };
  readonly whatHappened: string;
  readonly whatToDo: string;
  /** Instants in UTC. */
  readonly at: string;
  readonly withdrawn: { readonly reason: string; readonly at: string } | null;
};

export function noticeView(row: Row): NoticeView {
  const named = row.spawnLot?.species ?? row.substrateLot?.material;
  return {
    ...lotOf(row),
    id: row.id,
    revision: row.revision,
    lotCode: row.spawnLot?.code ?? row.substrateLot?.code ?? '',
    what: { en: named?.nameEn ?? '', es: named?.nameEs ?? '' },
    whatHappened: row.whatHappened,
    whatToDo: row.whatToDo,
    at: row.createdAt.toISOString(),
    withdrawn:
      row.voidedAt === null ? null : { reason: row.voidReason ?? '', at: row.voidedAt.toISOString() },
  };
}
