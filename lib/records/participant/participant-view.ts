import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import { asCalendarDate } from '../fields/stored-date';

export const participantInclude = {
  site: { select: { name: true } },
  contact: { select: { name: true } },
  _count: { select: { attendances: { where: { voidedAt: null, training: { voidedAt: null } } } } },
} satisfies Prisma.ParticipantInclude;

type Row = Prisma.ParticipantGetPayload<{ include: typeof participantInclude }>;

/** A participant as screens show it; `name` is null once erased, a consent null when it does not hold. */
export function participantView(row: Row) {
  const day = (date: Date | null) => (date === null ? null : asCalendarDate(date));
  return {
    id: row.id,
    revision: row.revision,
    siteId: row.siteId,
    siteName: row.site.name,
    name: row.contact?.name ?? null,
    consents: { counted: day(row.countedOn), named: day(row.namedOn), pictured: day(row.picturedOn) },
    erased: row.erasedAt !== null,
    trainings: row._count.attendances,
    voided: row.voidedAt === null ? null : { reason: row.voidReason ?? '' },
  };
}
