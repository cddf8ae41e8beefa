import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** Tables of records that are known by a code of their own. */
export type CodedTable = 'batch' | 'spawn_lot' | 'substrate_lot' | 'site' | 'treatment_run';

export type Coded = { readonly id: string; readonly code: string };

/** Those of the ids under which the actor has made a record before, with its code: a repeat is answered with it. */
export async function madeBefore(
  { db, actor }: ReadContext,
  table: CodedTable,
  inputs: readonly { readonly id: string | null }[],
): Promise<ReadonlyMap<string, Coded>> {
  const ids = inputs.flatMap(({ id }) => id ?? []);
  if (ids.length === 0) return new Map();
  const rows = await db.$queryRawUnsafe<Coded[]>(
    `select id::text, code from public.${table}
      where network_id = $1::uuid and id = any($2::uuid[]) and created_by_id = $3::uuid`,
    ...[actor.networkId, ids, actor.personId],
  );
  return new Map(rows.map((row) => [row.id, row]));
}
