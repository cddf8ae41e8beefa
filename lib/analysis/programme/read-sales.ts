import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { OutletKind } from '@/lib/growing/programme-vocabulary';
import type { Period } from '../production/read-production';
import { grouped } from './grouped';

/** Sales of a site through one kind of outlet in one currency: whole grams and whole minor units. */
export type SiteSales = {
  readonly siteId: string;
  readonly outlet: OutletKind;
  readonly currency: string;
  readonly sales: number;
  readonly grams: number;
  readonly amountMinor: number;
  /** Customers where they were counted, and in how many of the sales they were. */
  readonly customers: number;
  readonly salesWithCustomers: number;
};

/** Sales of a period by site, outlet and currency; amounts of different currencies are never added up. */
export async function readSales({ db, actor }: ReadContext, { from, to }: Period): Promise<SiteSales[]> {
  return db.$queryRaw<SiteSales[]>`
    select site_id::text as "siteId", outlet::text as outlet, currency::text as currency, count(*)::int as sales,
      sum(grams)::float8 as grams, sum(amount_minor)::float8 as "amountMinor",
      coalesce(sum(customers), 0)::int as customers, count(customers)::int as "salesWithCustomers"
    from sale where network_id = ${actor.networkId}::uuid and voided_at is null
      and sold_on between ${from}::date and ${to}::date
    group by site_id, outlet, currency order by site_id, outlet, currency`;
}

export type CurrencyTotal = {
  readonly currency: string;
  readonly sales: number;
  readonly grams: number;
  readonly amountMinor: number;
};

/** Totals of each currency, in the order of their codes. */
export function totalByCurrency(rows: readonly SiteSales[]): CurrencyTotal[] {
  const groups = grouped(rows, ({ currency }) => currency);
  return [...groups]
    .map(([currency, same]) => ({
      currency,
      sales: same.reduce((sum, row) => sum + row.sales, 0),
      grams: same.reduce((sum, row) => sum + row.grams, 0),
      amountMinor: same.reduce((sum, row) => sum + row.amountMinor, 0),
    }))
    .sort((a, b) => a.currency.localeCompare(b.currency));
}
