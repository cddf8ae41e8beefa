import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import type { ConditionMeasure } from '@/lib/growing/vocabulary';

export type Reading = { readonly at: Date; readonly measure: ConditionMeasure; readonly value: number };

type Into = {
  readonly placeId: string;
  readonly siteId: string;
  readonly importId: string | null;
  /** Id of the first of them; null: any. */
  readonly firstId: string | null;
};

/**
 * Inserts readings in one statement and answers how many were new: where the place has a value of the measure at the
 * instant already, that one stays.
 */
export async function insertReadings(
  { db, actor, origin }: WriteContext,
  { placeId, siteId, importId, firstId }: Into,
  readings: readonly Reading[],
): Promise<number> {
  return db.$executeRaw`
    insert into condition_reading (network_id, id, place_id, site_id, import_id, read_at, measure, value, origin, created_by_id)
    select ${actor.networkId}::uuid, case when r.line = 1 then coalesce(${firstId}::uuid, uuidv7()) else uuidv7() end,
      ${placeId}::uuid, ${siteId}::uuid, ${importId}::uuid,
      r.at::timestamptz, r.measure::condition_measure, r.value, ${origin}::record_origin, ${actor.personId}::uuid
    from unnest(${readings.map(({ at }) => at.toISOString())}::text[], ${readings.map(({ measure }) => measure)}::text[],
      ${readings.map(({ value }) => value)}::numeric[])
      with ordinality as r(at, measure, value, line)
    on conflict (network_id, place_id, measure, read_at) where voided_at is null do nothing`;
}
