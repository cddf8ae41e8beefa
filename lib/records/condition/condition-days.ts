import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ConditionMeasure } from '@/lib/growing/vocabulary';

/** What was read of one measure in one day, or in a few where the time is long: least, mean and most, and how many. */
export type ConditionDay = {
  readonly measure: ConditionMeasure;
  /** First day, by the calendar of the site; `days` of them together. */
  readonly on: string;
  readonly days: number;
  readonly low: number;
  readonly mean: number;
  readonly high: number;
  readonly readings: number;
};

/** When a batch, or anybody, looks at a place: both days included. */
export type Stay = { readonly placeId: string; readonly from: string; readonly to: string };

/** More points than this say no more on a phone. */
const mostPoints = 92;

/** Least, mean and most of each measure over the stays, in the order of days. */
export async function conditionDays(
  { db, actor }: ReadContext,
  stays: readonly Stay[],
  timeZone: string,
): Promise<ConditionDay[]> {
  if (stays.length === 0) return [];
  const from = stays.map((stay) => stay.from).sort()[0] ?? '';
  const to =
    stays
      .map((stay) => stay.to)
      .sort()
      .at(-1) ?? '';
  const length = (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000 + 1;
  const days = Math.max(1, Math.ceil(length / mostPoints));
  return db.$queryRaw<ConditionDay[]>`
    with stays as (
      select s.place_id::uuid as place_id, s.from_day::date as from_day, s.to_day::date as to_day
      from unnest(${stays.map(({ placeId }) => placeId)}::text[], ${stays.map((stay) => stay.from)}::text[],
        ${stays.map((stay) => stay.to)}::text[]) as s(place_id, from_day, to_day)
    ), read as (
      select r.measure, r.value, ((r.read_at at time zone ${timeZone})::date - ${from}::date) / ${days}::int as part
      from stays s join condition_reading r on r.network_id = ${actor.networkId}::uuid and r.place_id = s.place_id
        and r.voided_at is null
        and r.read_at >= s.from_day::timestamp at time zone ${timeZone}
        and r.read_at < (s.to_day + 1)::timestamp at time zone ${timeZone}
    )
    select measure::text as measure, (${from}::date + part * ${days}::int)::text as "on", ${days}::int as days,
      min(value)::float8 as low, round(avg(value), 1)::float8 as mean, max(value)::float8 as high,
      count(*)::int as readings
    from read group by measure, part order by part, measure`;
}
