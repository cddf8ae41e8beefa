import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import { asCalendarDate } from '../fields/stored-date';

export const saleInclude = { site: { select: { name: true } } } satisfies Prisma.SaleInclude;

type Row = Prisma.SaleGetPayload<{ include: typeof saleInclude }>;

/** A sale as screens show it: whole grams, whole minor units of its currency. */
export function saleView(row: Row) {
  return {
    id: row.id,
    revision: row.revision,
    siteId: row.siteId,
    siteName: row.site.name,
    soldOn: asCalendarDate(row.soldOn),
    outlet: row.outlet,
    grams: row.grams,
    price: { minor: row.amountMinor, currency: row.currency },
    customers: row.customers,
    note: row.note,
    voided: row.voidedAt === null ? null : { reason: row.voidReason ?? '' },
  };
}

export type SaleView = ReturnType<typeof saleView>;
