import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { CalendarDate } from '@/lib/growing/calendar-date';
import { type Destination, destinations } from '@/lib/growing/vocabulary';
import type { FigureBySite } from './by-site-amounts';
import { sumFigure } from './sum-figure';

export type Period = { readonly from: CalendarDate; readonly to: CalendarDate };

export type Harvest = {
  /** Everything weighed, kg fresh. */
  readonly total: FigureBySite;
  /** By where it went, in the order of the vocabulary; `not-said` is what no destination was given for. */
  readonly byDestination: readonly {
    readonly destination: Destination | 'not-said';
    readonly kilograms: FigureBySite;
  }[];
};

type Row = { siteId: string; destination: Destination | null; grams: number; batches: number };

/** Fresh mass weighed in a period, by the date of the weighing (both days included). Voided weighings are out. */
export async function readHarvest(
  { db, actor }: ReadContext,
  { from, to }: Period,
  now: Date,
): Promise<Harvest> {
  const network = actor.networkId;
  const totals = await db.$queryRaw<Row[]>`
    select site_id::text as "siteId", null as destination, sum(fresh_grams)::float8 as grams, 0 as batches from weighing
    where network_id = ${network}::uuid and weighed_on between ${from}::date and ${to}::date and voided_at is null
    group by site_id`;
  const gone = await db.$queryRaw<Row[]>`
    select d.site_id::text as "siteId", d.destination::text as destination, sum(d.grams)::float8 as grams, 0 as batches
    from weighing_destination d join weighing w on w.network_id = d.network_id and w.id = d.weighing_id
    where d.network_id = ${network}::uuid and w.weighed_on between ${from}::date and ${to}::date
      and d.voided_at is null and w.voided_at is null
    group by d.site_id, d.destination`;
  const [counted] = await db.$queryRaw<{ batches: number }[]>`
    select count(distinct l.batch_id)::int as batches
    from weighing_line l join weighing w on w.network_id = l.network_id and w.id = l.weighing_id
    where l.network_id = ${network}::uuid and w.weighed_on between ${from}::date and ${to}::date
      and l.voided_at is null and w.voided_at is null`;
  const batches = counted?.batches ?? 0;
  const asOf = now.toISOString();
  const kilograms = (rows: readonly Row[], sign = 1) =>
    rows.map(({ siteId, grams }) => ({ siteId, amount: sign * grams }));
  const figureOf = (amounts: ReturnType<typeof kilograms>) =>
    sumFigure({ unit: 'kilograms', amounts, batches, asOf });
  const named = destinations.map((destination) => ({
    destination,
    kilograms: figureOf(kilograms(gone.filter((row) => row.destination === destination))),
  }));
  const rest = figureOf([...kilograms(totals), ...kilograms(gone, -1)]);
  return {
    total: figureOf(kilograms(totals)),
    byDestination: [...named, { destination: 'not-said', kilograms: rest }],
  };
}
