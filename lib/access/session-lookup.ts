import 'server-only';
import { z } from 'zod';
import type { Actor, Person } from './actor';
import { personOf, personRow } from './person-row';
import { asNobody } from './scoped-db';

const sessionRow = personRow.extend({
  session_id: z.string(),
  network_id: z.string().nullable(),
  network_name: z.string().nullable(),
  network_time_zone: z.string().nullable(),
  membership_id: z.string().nullable(),
  member_role: z.enum(['coordinator', 'member', 'funder']).nullable(),
  site_ids: z.array(z.string()),
});

/** Who a session belongs to at this moment: a person, and an actor when a network is open. */
export type Signed = { readonly person: Person; readonly actor: Actor | undefined };

/** Reads the session's row: ended, expired and disabled ones answer undefined at once. */
export async function lookUpSession(sessionId: string): Promise<Signed | undefined> {
  if (!z.uuid().safeParse(sessionId).success) return undefined;
  const rows = await asNobody(
    (db) => db.$queryRaw<
      unknown[]
    >`select session_id::text, person_id::text, person_name, language::text, region, mass_unit::text,
      temperature_unit::text, volume_unit::text, network_id::text, network_name, network_time_zone, membership_id::text,
      member_role::text, site_ids::text[] from app.session_lookup(${sessionId}::uuid)`,
  );
  if (rows.length === 0) return undefined;
  const row = sessionRow.parse(rows[0]);
  const person = personOf(row, row.session_id);
  if (!row.network_id || !row.membership_id || !row.member_role) return { person, actor: undefined };
  const actor: Actor = {
    ...person,
    networkId: row.network_id,
    networkName: row.network_name ?? '',
    networkTimeZone: row.network_time_zone ?? 'UTC',
    membershipId: row.membership_id,
    role: row.member_role,
    siteIds: row.site_ids,
  };
  return { person, actor };
}
