import 'server-only';
import { z } from 'zod';
import type { Actor } from './actor';
import { apiTokenHash } from './api-token';
import { personOf, personRow } from './person-row';
import { asNobody } from './scoped-db';

const tokenRow = personRow.extend({
  token_id: z.string(),
  may_write: z.boolean(),
  every_site: z.boolean(),
  token_site_ids: z.array(z.string()),
  used_today: z.boolean(),
  network_id: z.string(),
  network_name: z.string(),
  network_time_zone: z.string(),
  membership_id: z.string(),
  member_role: z.enum(['coordinator', 'member']),
  site_ids: z.array(z.string()),
});

/**
 * The person behind a token as they are at this moment, narrowed to what the token may. A coordinator whose token is
 * narrowed to sites acts as a member of those. Undefined for a token that does not work (any more). Notes the day.
 */
export async function lookUpToken(secret: string): Promise<Actor | undefined> {
  const hash = apiTokenHash(secret);
  if (hash === undefined) return undefined;
  return asNobody(async (db) => {
    const rows = await db.$queryRaw<
      unknown[]
    >`select token_id::text, may_write, every_site, token_site_ids::text[],
      coalesce(last_used_on = (now() at time zone 'UTC')::date, false) as used_today, person_id::text, person_name,
      language::text, region, mass_unit::text, temperature_unit::text, volume_unit::text, network_id::text, network_name,
      network_time_zone, membership_id::text, member_role::text, site_ids::text[] from app.token_lookup(${hash})`;
    if (rows.length === 0) return undefined;
    const row = tokenRow.parse(rows[0]);
    if (!row.used_today) await db.$queryRaw`select app.note_token_use(${row.token_id}::uuid)::text`;
    return actorOf(row);
  });
}

function actorOf(row: z.output<typeof tokenRow>): Actor {
  const scope = row.every_site ? undefined : row.token_site_ids;
  const own = row.member_role === 'coordinator' ? (scope ?? []) : row.site_ids;
  return {
    // No session stands behind it: what needs one, such as signing out, finds none.
    ...personOf(row, ''),
    networkId: row.network_id,
    networkName: row.network_name,
    networkTimeZone: row.network_time_zone,
    membershipId: row.membership_id,
    role: scope === undefined ? row.member_role : 'member',
    siteIds: scope === undefined ? own : own.filter((id) => scope.includes(id)),
    token: { id: row.token_id, mayWrite: row.may_write, siteScope: scope },
  };
}
