import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { leaveNetwork } from '@/lib/access/leave-network';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { invalid } from '@/lib/base/result';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';
import { listInvitations } from '@/lib/records/person/list-invitations.query';
import { holding as holdingOf } from '../../access/leaving/holding';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { bring } from './bring';
import { joinByInvitation } from './join-by-invitation';

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
const invitations = async () =>
  (await readAs(people.coordinator, (context) => listInvitations(context, null, now))).invitations;
const holding = (...words: string[]) => holdingOf(admin, ...words);

const join = (invited: string, email: string, name: string) =>
  joinByInvitation(people.coordinator, { invited, email, name });

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
