import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import { asCalendarDate } from '../fields/stored-date';

export const practiceInclude = { site: { select: { name: true } } } satisfies Prisma.AdoptedPracticeInclude;

type Row = Prisma.AdoptedPracticeGetPayload<{ include: typeof practiceInclude }>;

/** A practice taken up, as screens show it; `until` is null while it goes on. */
export function practiceView(row: Row) {
  return {
    id: row.id,
    revision: row.revision,
    siteId: row.siteId,
    siteName: row.site.name,
    practice: row.practice,
    description: row.description,
    since: asCalendarDate(row.since),
    until: row.until === null ? null : asCalendarDate(row.until),
    growers: row.growers,
    voided: row.voidedAt === null ? null : { reason: row.voidReason ?? '' },
  };
}

export type PracticeView = ReturnType<typeof practiceView>;
