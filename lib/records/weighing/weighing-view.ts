import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import type { Destination, TrimState } from '@/lib/database/generated/enums';
import { asCalendarDate } from '../fields/stored-date';

export const weighingInclude = {
  site: true,
  lines: {
    where: { voidedAt: null },
    include: { batch: { include: { species: true } } },
    orderBy: { id: 'asc' },
  },
  destinations: { where: { voidedAt: null } },
} satisfies Prisma.WeighingInclude;

type Row = Prisma.WeighingGetPayload<{ include: typeof weighingInclude }>;

/** A weighing as screens show it; masses in whole grams. */
export type WeighingView = {
  readonly id: string;
  readonly revision: number;
  readonly siteId: string;
  readonly siteName: string;
  readonly weighedOn: string;
  readonly freshGrams: number;
  readonly trimState: TrimState;
  readonly grade: string | null;
  readonly note: string | null;
  readonly voided: { readonly reason: string } | null;
  readonly lines: readonly {
    readonly batchId: string;
    readonly batchCode: string;
    readonly speciesCode: string;
    readonly flush: number;
    readonly freshGrams: number;
    readonly shared: boolean;
    readonly forcedFlush: boolean | null;
  }[];
  readonly destinations: Readonly<Partial<Record<Destination, number>>>;
};

export function weighingView(row: Row): WeighingView {
  return {
    id: row.id,
    revision: row.revision,
    siteId: row.siteId,
    siteName: row.site.name,
    weighedOn: asCalendarDate(row.weighedOn),
    freshGrams: row.freshGrams,
    trimState: row.trimState,
    grade: row.grade,
    note: row.note,
    voided: row.voidedAt === null ? null : { reason: row.voidReason ?? '' },
    lines: row.lines.map((line) => ({
      batchId: line.batchId,
      batchCode: line.batch.code,
      speciesCode: line.batch.species.code,
      flush: line.flush,
      freshGrams: line.freshGrams,
      shared: line.sharedWeighing,
      forcedFlush: line.forcedFlush,
    })),
    destinations: Object.fromEntries(row.destinations.map(({ destination, grams }) => [destination, grams])),
  };
}
