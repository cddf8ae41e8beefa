import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** Names of people of the network by their ids; whoever cannot be named is left out. */
export async function colleagueNames(
  { db }: ReadContext,
  ids: readonly (string | null)[],
): Promise<Readonly<Record<string, string>>> {
  const wanted = [...new Set(ids.filter((id) => id !== null))];
  if (wanted.length === 0) return {};
  const rows = await db.$queryRaw<{ id: string; name: string | null }[]>`
    select id::text as id, app.colleague_name(id) as name from unnest(${wanted}::uuid[]) as wanted (id)`;
  return Object.fromEntries(rows.flatMap(({ id, name }) => (name === null ? [] : [[id, name] as const])));
}
