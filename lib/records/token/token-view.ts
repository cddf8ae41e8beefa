import type { Prisma } from '@/lib/database/generated/client';
import { asCalendarDate } from '../fields/stored-date';

/** Everything but the hash, which nobody may read. */
export const tokenSelect = {
  id: true,
  revision: true,
  personId: true,
  name: true,
  prefix: true,
  mayWrite: true,
  siteIds: true,
  expiresAt: true,
  lastUsedOn: true,
  createdAt: true,
  voidedAt: true,
} satisfies Prisma.ApiTokenSelect;

type Row = Prisma.ApiTokenGetPayload<{ select: typeof tokenSelect }>;

export type TokenState = 'works' | 'expired' | 'withdrawn';

/** A token as its page shows it; instants UTC, the day of last use in UTC. */
export function tokenView(row: Row, now: Date) {
  const { id, revision, personId, name, prefix, mayWrite, siteIds, expiresAt, createdAt } = row;
  const state: TokenState =
    row.voidedAt !== null
      ? 'withdrawn'
      : expiresAt !== null && expiresAt.getTime() <= now.getTime()
        ? 'expired'
        : 'works';
  return {
    ...{ id, revision, personId, name, prefix, mayWrite, siteIds, expiresAt, createdAt, state },
    lastUsedOn: row.lastUsedOn === null ? null : asCalendarDate(row.lastUsedOn),
  };
}

export type TokenView = ReturnType<typeof tokenView>;
