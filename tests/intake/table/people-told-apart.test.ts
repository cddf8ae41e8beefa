import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { joinAsNew } from '@/lib/access/join';
import { joinInput } from '@/lib/access/join.input';
import { leaveNetwork } from '@/lib/access/leave-network';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { lookUpSession } from '@/lib/access/session-lookup';
import { openSession } from '@/lib/access/sign-in';
import { invalid } from '@/lib/base/result';
import { invitationInput } from '@/lib/records/person/invitation.input';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';
import { listInvitations } from '@/lib/records/person/list-invitations.query';
import { renewInvitation } from '@/lib/records/person/renew-invitation.command';
import { holding as holdingOf } from '../../access/leaving/holding';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { bring } from './bring';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
const now = new Date();
const kind = 'people';
let people: Growers;

beforeAll(async () => {
  await admin.connect();
  people = await growers(superuser);
});
afterAll(() => admin.end());

const table = (...rows: string[][]) => rows.map((row) => row.join(';')).join('\n');
const invitations = () => readAs(people.coordinator, (context) => listInvitations(context, now));
const holding = (...words: string[]) => holdingOf(admin, ...words);

/** Joins by the invitation of one address, with an account of another one. */
async function join(invited: string, email: string, name: string) {
  const open = (await invitations()).find((one) => one.email === invited);
  const renewed = await runAs(people.coordinator, invitationInput, renewInvitation, { id: open?.id ?? '' });
  if (renewed.kind !== 'ok') throw new Error(JSON.stringify(renewed));
  const given = joinInput.parse({ name, email, password: 'straw-bucket-lantern' });
  const joined = await joinAsNew(renewed.value.token, given);
  if (joined.kind !== 'ok') throw new Error(JSON.stringify(joined));
  const signed = await lookUpSession(await openSession(joined.value.personId, 'device'));
  if (!signed?.actor) throw new Error('cannot sign in');
  return signed.actor;
}

describe('whoever joined with another address than they were invited by', () => {
  it('is not invited again, by table or by form, and is erased by both when they leave', async () => {
    const rows = table(
      ['First name', 'Last name', 'E-mail', 'Sites', 'Phone'],
      ['Tansy', 'Oakshott', 'work@example.org', 'MILL', '555 0199'],
    );
    const file = await bring(people.coordinator, { kind, now }, rows);
    await file.check();
    await file.add();
    const leaver = await join('work@example.org', 'private@example.org', 'Tansy Oakshott');
    const again = await bring(people.coordinator, { kind, now }, rows);
    expect((await again.check()).counts).toMatchObject({ new: 0, there: 1 });
    const asked = { role: 'member', siteIds: [people.millLane], forName: 'T', forEmail: 'work@example.org' };
    expect(await runAs(people.coordinator, invitePersonInput, invitePerson, asked)).toEqual(
      invalid('forEmail', 'already-member'),
    );
    expect(await leaveNetwork(leaver, leaver.networkId, leaver.networkId)).toMatchObject({ kind: 'ok' });
    expect(await holding('Oakshott', 'work@example.org', '555 0199')).toEqual([]);
  });
});

describe('two people of one name', () => {
  it('are two: one who leaves takes neither the invitation nor the waiting row of the other along', async () => {
    const rows = table(
      ['Name', 'E-mail', 'Sites'],
      ['Ana Vega', 'ana1@example.org', 'MILL'],
      ['Ana Vega', 'ana2@example.org', 'MILL'],
    );
    const file = await bring(people.coordinator, { kind, now }, rows);
    await file.check();
    await file.add();
    const waiting = await bring(
      people.coordinator,
      { kind, now },
      table(['Name', 'E-mail', 'Sites'], ['Ana Vega', 'ana3@example.org', 'MILL']),
    );
    await waiting.check();
    const leaver = await join('ana1@example.org', 'ana1@example.org', 'Ana Vega');
    expect(await leaveNetwork(leaver, leaver.networkId, leaver.networkId)).toMatchObject({ kind: 'ok' });
    expect((await invitations()).map(({ email }) => email)).toContain('ana2@example.org');
    const { counts } = await waiting.look();
    expect(counts.new + counts.needs + counts.unread).toBe(1);
    expect(await holding('ana1@example.org')).toEqual([]);
  });
});

describe('a table of people without headings', () => {
  it('takes its first line for a person, and keeps nobody in the history', async () => {
    const file = await bring(
      people.coordinator,
      { kind, now, siteId: people.millLane },
      'Ivory Skerry;ivory@example.org\nBurnet Loy;burnet@example.org\n',
    );
    expect((await file.look()).sample).toHaveLength(2);
    expect(await holding('ivory@example.org')).not.toContain('history');
  });
});
