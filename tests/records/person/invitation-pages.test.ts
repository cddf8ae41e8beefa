import { Client } from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { getInvitation } from '@/lib/records/person/get-invitation.query';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitationsPerPage, listInvitations } from '@/lib/records/person/list-invitations.query';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';

const now = new Date('2026-07-20T15:00:00Z');
const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let people: Growers;

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
  const { coordinator, millLane } = people;
  const wanted = { role: 'member' as const, siteIds: [millLane], forName: null, forEmail: null };
  for (let at = 0; at < 2 * invitationsPerPage + 1; at += 1) {
    const options = { now, origin: at < 3 ? ('file_import' as const) : ('form' as const) };
    const made = await writeAs(coordinator, options, (context) => invitePerson(context, wanted));
    if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
  }
}, 120_000);
afterAll(() => admin.end());

const page = (after: string | null) =>
  readAs(people.coordinator, (context) => listInvitations(context, after, now));

it('Invitations are told a page at a time, each once, also when one is made in between', async () => {
  const first = await page(null);
  expect(first.invitations).toHaveLength(invitationsPerPage);
  const { millLane, coordinator } = people;
  const wanted = { role: 'member' as const, siteIds: [millLane], forName: null, forEmail: null };
  await writeAs(coordinator, { now }, (context) => invitePerson(context, wanted));
  const second = await page(first.next ?? '');
  const third = await page(second.next ?? '');
  const ids = [first, second, third].flatMap(({ invitations }) => invitations.map(({ id }) => id));
  expect(ids).toHaveLength(2 * invitationsPerPage + 1);
  expect(new Set(ids).size).toBe(ids.length);
  expect(third.next).toBeUndefined();
});

it('each page says of how many in all nobody has seen a link, and what is no place begins at the first', async () => {
  expect((await page(null)).linkless).toBe(3);
  expect((await page('nothing like it')).invitations).toHaveLength(invitationsPerPage);
});

it('one of a later page is found by itself, and by its network alone', async () => {
  const { next } = await page(null);
  const [one] = (await page(next ?? '')).invitations;
  const found = (who: 'coordinator' | 'stranger' | 'member') =>
    readAs(people[who], (context) => getInvitation(context, one?.id ?? '', now));
  expect(await found('coordinator')).toMatchObject({ id: one?.id, siteNames: ['Mill Lane Garden'] });
  expect([await found('stranger'), await found('member')]).toEqual([undefined, undefined]);
});
