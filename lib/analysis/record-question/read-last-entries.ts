import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** The latest day of anything written of a batch but its inoculation, of its first pins, and of its last picking. */
export type LastEntries = {
  readonly enteredOn: string | null;
  readonly pinsOn: string | null;
  readonly pickedOn: string | null;
};

type Encoded = readonly [
  id: string,
  enteredOn: string | null,
  pinsOn: string | null,
  pickedOn: string | null,
];

/** Of each of these batches; a look-up by index in five tables for each. */
export async function readLastEntries(
  { db, actor }: ReadContext,
  batchIds: readonly string[],
): Promise<ReadonlyMap<string, LastEntries>> {
  if (batchIds.length === 0) return new Map();
  const network = actor.networkId;
  const [answer] = await db.$queryRaw<{ rows: string | null }[]>`
    select json_agg(json_build_array(batch.id,
      greatest(
        (select max(looked_on) from look where network_id = ${network}::uuid and batch_id = batch.id and voided_at is null),
        (select max(found_on) from finding where network_id = ${network}::uuid and batch_id = batch.id and voided_at is null),
        (select max(lost_on) from loss where network_id = ${network}::uuid and batch_id = batch.id and voided_at is null),
        (select max(checked_on) from "check" where network_id = ${network}::uuid and batch_id = batch.id and voided_at is null),
        picked.last_on),
      (select min(checked_on) from "check" where network_id = ${network}::uuid and batch_id = batch.id
        and kind = 'pins_seen' and voided_at is null),
      picked.last_on))::text as rows
    from unnest(${[...batchIds]}::uuid[]) as batch (id)
    cross join lateral (select max(g.weighed_on) as last_on from weighing_line i
      join weighing g on g.network_id = ${network}::uuid and g.id = i.weighing_id and g.voided_at is null
      where i.network_id = ${network}::uuid and i.batch_id = batch.id and i.voided_at is null) picked`;
  // The shape is the statement's own.
  const rows = answer?.rows ? (JSON.parse(answer.rows) as Encoded[]) : [];
  return new Map(rows.map(([id, enteredOn, pinsOn, pickedOn]) => [id, { enteredOn, pinsOn, pickedOn }]));
}
