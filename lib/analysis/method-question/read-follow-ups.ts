import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { daysBetween } from '@/lib/growing/calendar-date';
import type { JudgedBatch } from '../comparison/judged-batch';
import type { MethodFollowUp } from './method-curves';

type Found = readonly [batchId: string, on: string, units: number];

/**
 * How long the units of each batch were watched and how that ended: found contaminated, lost otherwise or closed clean, or
 * still open at the last look. Units of a batch that nobody looked at count for no time at all and are left out.
 */
export async function readFollowUps(
  { db, actor }: ReadContext,
  judged: readonly JudgedBatch[],
  { from, to }: { readonly from: string; readonly to: string },
): Promise<MethodFollowUp[]> {
  const network = actor.networkId;
  const [lists] = await db.$queryRaw<{ found: string | null; lost: string | null }[]>`
    with chosen as materialized (
      select id from batch where network_id = ${network}::uuid and voided_at is null
        and inoculated_on between ${from}::date and ${to}::date
    )
    select (select json_agg(json_build_array(f.batch_id, f.found_on, f.units))::text
        from chosen c join finding f on f.network_id = ${network}::uuid and f.batch_id = c.id
        where f.voided_at is null) as found,
      (select json_agg(json_build_array(l.batch_id, l.lost_on, l.units - l.contaminated_units))::text
        from chosen c join loss l on l.network_id = ${network}::uuid and l.batch_id = c.id
        where l.voided_at is null and l.units > l.contaminated_units) as lost`;
  // The shapes are the statement's own.
  const rowsOf = (text: string | null | undefined) => (text ? (JSON.parse(text) as Found[]) : []);
  return followUpsOf(judged, rowsOf(lists?.found), rowsOf(lists?.lost));
}

/** The same from rows that have been read. */
export function followUpsOf(
  judged: readonly JudgedBatch[],
  found: readonly Found[],
  lost: readonly Found[],
): MethodFollowUp[] {
  const ends = new Map<string, { on: string; units: number; cause: string }[]>();
  const note =
    (cause: string) =>
    ([id, on, units]: Found) =>
      ends.set(id, [...(ends.get(id) ?? []), { on, units, cause }]);
  found.forEach(note('contaminated'));
  lost.forEach(note('lost'));
  return judged.flatMap(({ facts, methodKey, runCluster }) => {
    if (facts.voided) return [];
    const own = ends.get(facts.id) ?? [];
    const row = (on: string, units: number, cause: string | null): MethodFollowUp => ({
      methodKey,
      cluster: runCluster,
      time: Math.max(0, daysBetween(facts.inoculatedOn, on)),
      cause,
      count: units,
    });
    const left = facts.unitCount - own.reduce((sum, { units }) => sum + units, 0);
    const seen = facts.lastInspectedOn;
    const rest =
      left <= 0
        ? []
        : facts.closedOn !== null
          ? [row(facts.closedOn, left, 'closed')]
          : seen === null
            ? []
            : [row(seen, left, null)];
    return [...own.map(({ on, units, cause }) => row(on, units, cause)), ...rest];
  });
}
