import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { BatchFacts } from './batch-facts';
import { together } from './comparison-filter.input';
import { decodeBatchRow, type EncodedBatch } from './decode-batch-row';

/** Which batches are read, by date of inoculation; a field left undefined narrows nothing. */
export type BatchRowsWanted = {
  readonly from: string;
  readonly to: string;
  readonly species?: string | undefined;
  readonly container?: string | undefined;
  readonly material?: string | undefined;
  /** These sites only. */
  readonly sites?: readonly string[] | undefined;
  /** Of those, these batches only. */
  readonly batches?: readonly string[] | undefined;
};

/** The same with every choice as the statements take it: null narrows nothing. */
export type BatchRowsBounds = {
  readonly from: string;
  readonly to: string;
  readonly species: string | null;
  readonly container: string | null;
  readonly material: string | null;
};

export function boundsOf({ from, to, species, container, material }: BatchRowsWanted): BatchRowsBounds {
  const given = (value: string | undefined) => (value === undefined || value === together ? null : value);
  return { from, to, species: given(species), container: container ?? null, material: given(material) };
}

/**
 * The facts of every batch wanted, voided ones too, in no particular order, under the actor's row policies. They are
 * kept with every write (see the analysis README), so that nothing is added up here; one JSON text arrives an order of
 * magnitude faster than as many records.
 */
export async function readBatchRows(
  { db, actor }: ReadContext,
  wanted: BatchRowsWanted,
): Promise<readonly BatchFacts[]> {
  const { from, to, species, container, material } = boundsOf(wanted);
  const sites = wanted.sites === undefined ? null : [...wanted.sites];
  const batches = wanted.batches === undefined ? null : [...wanted.batches];
  const [answer] = await db.$queryRaw<{ rows: string | null }[]>`
    select json_agg(json_build_array(
      batch_id, site_id, species_id, container, method_id, mixed_method, material_id, mixed_material,
      unit_count, inoculated_on, closed_on, closed_as_lost, no_harvest, voided, second_life,
      contamination_assessed_on, yield_assessed_on, dry_grams, dry_assumed, bed_area_cm2,
      contaminated_by_window_end, contaminated_at_any_time, lost_clean, last_inspected_on,
      fresh_grams_by_yield_day, fresh_grams, weighings, any_trimmed, any_as_picked, any_shared,
      run_ids, run_missing))::text as rows
    from batch_outcome
    where network_id = ${actor.networkId}::uuid and inoculated_on between ${from}::date and ${to}::date
      and (${species}::uuid is null or species_id = ${species}::uuid)
      and (${container}::text is null or container = ${container}::text)
      and (${material}::text is null or material_key = ${material}::text)
      and (${sites}::uuid[] is null or site_id = any (${sites}::uuid[]))
      and (${batches}::uuid[] is null or batch_id = any (${batches}::uuid[]))`;
  // The shape is the statement's own.
  const rows = answer?.rows ? (JSON.parse(answer.rows) as EncodedBatch[]) : [];
  return rows.map(decodeBatchRow);
}
