import type { ReadContext } from '@/lib/access/context';
import { type BatchEvents, type EventLists, eventsOf } from './batch-events';
import type { BatchRowsBounds } from './plain-batch-rows';

/** From so many batches on, reading the tables through is faster than looking up each batch. */
const manyBatches = 5000;

/**
 * What happened to the batches within the bounds, added up per batch. No list is joined with another one: with
 * hash joins for many batches and index look-ups for few, the time grows in step with the batches.
 */
export async function readBatchEvents(
  { db, actor }: ReadContext,
  { from, to, species, container, material, mixedOnly }: BatchRowsBounds,
  batchCount: number,
): Promise<BatchEvents> {
  const network = actor.networkId;
  const nestedLoops = batchCount < manyBatches ? 'on' : 'off';
  await db.$queryRaw`select set_config('enable_nestloop', ${nestedLoops}, true)`;
  const [lists] = await db.$queryRaw<EventLists[]>`
    with chosen as materialized (
      select id, container_kind = 'log' as for_life, contamination_assessed_on, yield_assessed_on from batch
      where network_id = ${network}::uuid and inoculated_on between ${from}::date and ${to}::date
        and (${species}::uuid is null or species_id = ${species}::uuid)
        and (${container}::container_kind is null or container_kind = ${container}::container_kind)
        and (${material}::uuid is null or material_id = ${material}::uuid)
        and (not ${mixedOnly}::boolean or mixed_material) and voided_at is null
    ), found as (
      select f.batch_id, sum(f.units) as ever, max(f.found_on) as last_on,
        sum(f.units) filter (where f.found_on <= c.contamination_assessed_on) as by_end
      from chosen c join finding f on f.network_id = ${network}::uuid and f.batch_id = c.id
      where f.voided_at is null group by f.batch_id
    ), lost as (
      select l.batch_id, sum(l.units - l.contaminated_units) as clean
      from chosen c join loss l on l.network_id = ${network}::uuid and l.batch_id = c.id
      where l.voided_at is null group by l.batch_id
    ), looked as (
      select k.batch_id, max(k.looked_on) as last_on
      from chosen c join look k on k.network_id = ${network}::uuid and k.batch_id = c.id
      where k.voided_at is null group by k.batch_id
    ), lines as (
      select l.batch_id, l.fresh_grams, l.shared_weighing, w.trim_state,
        w.weighed_on <= c.yield_assessed_on as in_time,
        c.for_life or w.weighed_on <= c.yield_assessed_on as counts
      from chosen c join weighing_line l on l.network_id = ${network}::uuid and l.batch_id = c.id
        join weighing w on w.network_id = ${network}::uuid and w.id = l.weighing_id
      where l.voided_at is null and w.voided_at is null
    ), weighed as (
      select batch_id, count(*) as times, sum(fresh_grams) as ever, sum(fresh_grams) filter (where in_time) as by_day,
        bool_or(counts and trim_state = 'trimmed') as trimmed,
        bool_or(counts and trim_state = 'as_picked') as as_picked,
        bool_or(counts and shared_weighing) as shared
      from lines group by batch_id
    ), treated as (
      select p.batch_id, string_agg(p.treatment_run_id::text, ' ' order by p.treatment_run_id) as runs,
        bool_or(p.treatment_run_id is null and m.kind <> 'untreated') as run_missing
      from chosen c join batch_component p on p.network_id = ${network}::uuid and p.batch_id = c.id
        join method m on m.network_id = ${network}::uuid and m.id = p.method_id
      where p.voided_at is null and p.role <> 'additive' group by p.batch_id
    )
    select (select json_agg(json_build_array(batch_id, by_end, ever, last_on))::text from found) as found,
      (select json_agg(json_build_array(batch_id, clean))::text from lost) as lost,
      (select json_agg(json_build_array(batch_id, last_on))::text from looked) as looked,
      (select json_agg(json_build_array(batch_id, by_day, ever, times, trimmed, as_picked, shared))::text
        from weighed) as weighed,
      (select json_agg(json_build_array(batch_id, runs, run_missing))::text from treated) as treated`;
  await db.$queryRaw`select set_config('enable_nestloop', 'on', true)`;
  return eventsOf(lists);
}
