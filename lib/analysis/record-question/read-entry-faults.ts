import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { questionWeighing } from '@/lib/growing/yield-plausibility';
import type { RecordFault } from './record-fault';

type Period = { readonly from: string; readonly to: string };

/** One weighing as the database's JSON gives it. */
type EncodedWeighing = readonly [
  id: string,
  siteId: string,
  on: string,
  codes: string,
  someUntold: boolean,
  lines: readonly (readonly [grams: number, units: number, container: ContainerKind])[],
];

/** Weighings of the period whose whole mass has no destination, or that are too heavy for the units they came from. */
export async function readWeighingFaults(
  { db, actor }: ReadContext,
  { from, to }: Period,
): Promise<RecordFault[]> {
  const network = actor.networkId;
  const [answer] = await db.$queryRaw<{ rows: string | null }[]>`
    select json_agg(row)::text as rows from (
      select json_build_array(w.id, w.site_id, w.weighed_on, string_agg(b.code, ', ' order by b.code),
        coalesce(d.grams, 0) < w.fresh_grams,
        json_agg(json_build_array(l.fresh_grams, b.unit_count, b.container_kind))) as row
      from weighing w
      join weighing_line l on l.network_id = ${network}::uuid and l.weighing_id = w.id and l.voided_at is null
      join batch b on b.network_id = ${network}::uuid and b.id = l.batch_id
      left join (select weighing_id, sum(grams) as grams from weighing_destination
        where network_id = ${network}::uuid and voided_at is null group by weighing_id) d on d.weighing_id = w.id
      where w.network_id = ${network}::uuid and w.voided_at is null and w.weighed_on between ${from}::date and ${to}::date
      group by w.id, w.site_id, w.weighed_on, w.fresh_grams, d.grams) weighings`;
  // The shape is the statement's own.
  const rows = answer?.rows ? (JSON.parse(answer.rows) as EncodedWeighing[]) : [];
  return rows.flatMap(([id, siteId, on, code, missing, lines]): RecordFault[] => {
    const fault = (kind: RecordFault['kind']): RecordFault => ({
      kind,
      siteId,
      of: 'weighing',
      id,
      code,
      on,
    });
    const heavy = lines.some((line) => questionWeighing(...line) !== null);
    return [...(missing ? [fault('no-destination')] : []), ...(heavy ? [fault('weighing-heavy')] : [])];
  });
}

/** Batches of the period with a harvest, a look or a finding of a later day than the one on which they were closed. */
export async function readLateEntries(
  { db, actor }: ReadContext,
  { from, to }: Period,
): Promise<RecordFault[]> {
  const network = actor.networkId;
  const rows = await db.$queryRaw<{ id: string; siteId: string; code: string; on: string }[]>`
    select b.id::text, b.site_id::text as "siteId", b.code, max(e.day)::text as on
    from batch b cross join lateral (
      select looked_on as day from look where network_id = ${network}::uuid and batch_id = b.id and voided_at is null
      union all select found_on from finding where network_id = ${network}::uuid and batch_id = b.id and voided_at is null
      union all select w.weighed_on from weighing_line l
        join weighing w on w.network_id = ${network}::uuid and w.id = l.weighing_id and w.voided_at is null
        where l.network_id = ${network}::uuid and l.batch_id = b.id and l.voided_at is null
    ) e
    where b.network_id = ${network}::uuid and b.voided_at is null and b.closed_on is not null
      and b.inoculated_on between ${from}::date and ${to}::date and e.day > b.closed_on
    group by b.id, b.site_id, b.code`;
  return rows.map((row) => ({ ...row, kind: 'entry-after-closing', of: 'batch' }));
}
