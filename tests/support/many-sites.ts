import type { Client } from 'pg';

/** How many sites of Larkmoor there are after `manySites`: two of the growers' and these. */
export const manyMade = 118;

/** Makes Larkmoor a network of more sites than a form lists: G-001 to G-118, named by number. */
export async function manySites(admin: Client, like: string, tag = ''): Promise<void> {
  await admin.query(
    `insert into site (network_id, id, code, name, kind, time_zone)
     select network_id, gen_random_uuid(), $2 || 'G-' || lpad(n::text, 3, '0'), 'Garden ' || lpad(n::text, 3, '0'), kind, time_zone
     from site, generate_series(1, $3::int) n where id = $1`,
    [like, tag, manyMade],
  );
}

/** The id of a site by its code. */
export async function siteByCode(admin: Client, code: string): Promise<string> {
  const { rows } = await admin.query<{ id: string }>('select id from site where code = $1', [code]);
  const [found] = rows;
  if (found === undefined) throw new Error(`no site ${code}`);
  return found.id;
}
