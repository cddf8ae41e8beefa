import { randomUUID } from 'node:crypto';
import { Client } from 'pg';
import type { Actor } from '@/lib/access/actor';

/** Colleagues of a member at the same site: a phone has a person, and each person may send only so much a second. */
export async function moreMembers(superuser: string, like: Actor, count: number): Promise<Actor[]> {
  const admin = new Client({ connectionString: superuser });
  await admin.connect();
  const made: Actor[] = [];
  for (let number = 1; number <= count; number += 1) {
    const [personId, membershipId] = [randomUUID(), randomUUID()];
    const { networkId } = like;
    await admin.query('insert into person (id) values ($1)', [personId]);
    await admin.query(
      "insert into membership (network_id, id, person_id, role) values ($1, $2, $3, 'member')",
      [networkId, membershipId, personId],
    );
    for (const siteId of like.siteIds)
      await admin.query(
        'insert into membership_site (network_id, membership_id, site_id) values ($1, $2, $3)',
        [networkId, membershipId, siteId],
      );
    made.push({ ...like, personId, membershipId, name: `Phone ${number}` });
  }
  await admin.end();
  return made;
}
