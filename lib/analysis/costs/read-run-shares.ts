import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { RecordedCosts } from '@/lib/growing/batch-cost';
import { shareOut } from '@/lib/growing/share-out';
import type { Period } from '../production/read-production';
import { grouped } from '../programme/grouped';

type UseRow = RecordedCosts & {
  readonly batchId: string;
  /** Null where a component was treated and its run was not recorded. */
  readonly runId: string | null;
  /** Dry mass of the batch that went through this run; null where it cannot be told. */
  readonly dryGrams: number | null;
};

export type RunShare = RecordedCosts & { readonly runId: string | null };

const nothingRecorded: RecordedCosts = {
  labourMinutes: null,
  suppliesMinor: null,
  fuelMinor: null,
  waterMinor: null,
};

/**
 * What each batch bears of the runs that treated it, by batch id: a run's costs are shared over all its batches by dry
 * mass, to the last minor unit. Nothing is shared where the dry mass of one of them is not known.
 */
export async function readRunShares(
  { db, actor }: ReadContext,
  { from, to }: Period,
  currency: string,
): Promise<ReadonlyMap<string, readonly RunShare[]>> {
  const rows = await db.$queryRaw<UseRow[]>`
    with chosen as (
      select id from batch where network_id = ${actor.networkId}::uuid and voided_at is null and closed_on is not null
        and inoculated_on between ${from}::date and ${to}::date),
    asked as (
      select distinct c.treatment_run_id as run_id
      from batch_component c join method m on m.network_id = c.network_id and m.id = c.method_id
      where c.network_id = ${actor.networkId}::uuid and c.voided_at is null and m.kind <> 'untreated'
        and c.batch_id in (select id from chosen)),
    touched as (
      select id from chosen
      union select c.batch_id from batch_component c join asked a on a.run_id = c.treatment_run_id
      where c.network_id = ${actor.networkId}::uuid and c.voided_at is null),
    treated as (
      select c.network_id, c.batch_id, c.treatment_run_id as run_id, sum(c.grams) as grams,
        bool_or(c.grams is null) as unweighed
      from touched b join batch_component c on c.network_id = ${actor.networkId}::uuid and c.batch_id = b.id
      join method m on m.network_id = c.network_id and m.id = c.method_id
      where c.voided_at is null and m.kind <> 'untreated'
      group by c.network_id, c.batch_id, c.treatment_run_id),
    share as (
      select t.network_id, t.batch_id, t.run_id, round(case when count(*) over w = 1 then b.dry_grams
          when bool_or(t.unweighed) over w then null
          else b.dry_grams * t.grams / nullif(sum(t.grams) over w, 0) end)::int as dry_grams
      from treated t join batch b on b.network_id = t.network_id and b.id = t.batch_id and b.voided_at is null
      window w as (partition by t.batch_id))
    select t.batch_id::text as "batchId", t.run_id::text as "runId", t.dry_grams as "dryGrams",
      n.labour_minutes as "labourMinutes", n.supplies_minor as "suppliesMinor", n.fuel_minor as "fuelMinor",
      n.water_minor as "waterMinor"
    from share t left join cost_note n on n.network_id = t.network_id and n.treatment_run_id = t.run_id and n.voided_at is null
      and n.currency = ${currency}
    where t.run_id is null or t.run_id in (select run_id from asked)
    order by t.run_id, t.batch_id`;
  const shares = new Map<string, RunShare[]>();
  const note = (batchId: string, share: RunShare) =>
    shares.set(batchId, [...(shares.get(batchId) ?? []), share]);
  for (const [runId, uses] of grouped(rows, (row) => row.runId))
    for (const [index, use] of uses.entries())
      note(use.batchId, { runId, ...(runId === null ? nothingRecorded : shareOf(uses, index)) });
  return shares;
}

function shareOf(uses: readonly UseRow[], index: number): RecordedCosts {
  const [run] = uses;
  const weights = uses.flatMap(({ dryGrams }) => dryGrams ?? []);
  if (!run || weights.length < uses.length) return nothingRecorded;
  const part = (value: number | null) =>
    value === null ? null : (shareOut(value, weights)?.[index] ?? null);
  return {
    labourMinutes: part(run.labourMinutes),
    suppliesMinor: part(run.suppliesMinor),
    fuelMinor: part(run.fuelMinor),
    waterMinor: part(run.waterMinor),
  };
}
