import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { BatchLots } from './model-batch';

type Row = readonly [batchId: string, lotId: string];

/**
 * The spawn lot and the substrate lot that most of each batch came from, by mass (of equals the one with the smaller id),
 * for batches inoculated in the period, under the actor's row policies.
 */
export async function readBatchLots(
  { db, actor }: ReadContext,
  { from, to }: { readonly from: string; readonly to: string },
): Promise<ReadonlyMap<string, BatchLots>> {
  const [lists] = await db.$queryRaw<{ spawn: string | null; material: string | null }[]>`
    with chosen as materialized (
      select id from batch where network_id = ${actor.networkId}::uuid and voided_at is null
        and inoculated_on between ${from}::date and ${to}::date
    ), spawn as (
      select distinct on (s.batch_id) s.batch_id, s.spawn_lot_id as lot_id
      from chosen c join spawn_share s on s.network_id = ${actor.networkId}::uuid and s.batch_id = c.id
      where s.voided_at is null order by s.batch_id, s.grams desc nulls last, s.spawn_lot_id
    ), material as (
      select distinct on (p.batch_id) p.batch_id, p.substrate_lot_id as lot_id
      from chosen c join batch_component p on p.network_id = ${actor.networkId}::uuid and p.batch_id = c.id
      where p.voided_at is null and p.role <> 'additive'
      order by p.batch_id, p.grams desc nulls last, p.substrate_lot_id
    )
    select (select json_agg(json_build_array(batch_id, lot_id))::text from spawn) as spawn,
      (select json_agg(json_build_array(batch_id, lot_id))::text from material) as material`;
  // The shapes are the statement's own.
  const rowsOf = (text: string | null | undefined) => (text ? (JSON.parse(text) as Row[]) : []);
  const material = new Map(rowsOf(lists?.material));
  const spawn = new Map(rowsOf(lists?.spawn));
  const ids = new Set([...spawn.keys(), ...material.keys()]);
  return new Map(
    [...ids].map((id) => [id, { spawn: spawn.get(id) ?? null, material: material.get(id) ?? null }]),
  );
}
