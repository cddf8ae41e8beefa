import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { lookUpInvitation } from '@/lib/access/join';
import { leaveNetwork } from '@/lib/access/leave-network';
import { runAs } from '@/lib/access/run-command';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { invalid, ok } from '@/lib/base/result';
import { keepFile } from '@/lib/intake/table/keep-file';
import { openPoints } from '@/lib/intake/table/open-points';
import { settlePoints } from '@/lib/intake/table/settle';
import { startJob } from '@/lib/intake/table/start-job';
import { firstLinksInput } from '@/lib/records/person/first-links.input';
import { invitationInput } from '@/lib/records/person/invitation.input';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';
import { listInvitations } from '@/lib/records/person/list-invitations.query';
import { makeFirstLinks } from '@/lib/records/person/make-first-links.command';
import { renewInvitation } from '@/lib/records/person/renew-invitation.command';
import { withdrawInvitation } from '@/lib/records/person/withdraw-invitation.command';
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
const invitationOf = async (email: string) => (await invitations()).find((one) => one.email === email);
const renew = (id: string) => runAs(people.coordinator, invitationInput, renewInvitation, { id });
const holding = (...words: string[]) => holdingOf(admin, ...words);

const join = (invited: string, name: string) => joinByInvitation(people.coordinator, { invited, name });

describe('a table of people', () => {
  it('becomes invitations and no account, each person once', async () => {
    const accounts = async () => (await admin.query('select count(*) from account')).rows[0];
    const before = await accounts();
    const member = `${people.member.personId}@example.org`;
    const rows = table(
      ['Name', 'E-mail', 'Role', 'Sites'],
      ['Moss Ferrant', 'Moss@Example.org', 'member', 'Mill Lane Garden, QUARRY'],
      ['Sedge Alder', 'sedge@example.org', 'funder', ''],
      ['Ives Marrow', member, 'member', 'MILL'],
      ['Moss again', 'moss@example.org', 'member', 'MILL'],
      ['No Address', '', 'member', 'MILL'],
      ['Bad Address', 'bad at example', 'member', 'MILL'],
      ['Nowhere', 'nowhere@example.org', 'member', 'MILL, Elm Court'],
      ['Siteless', 'siteless@example.org', 'member', ''],
    );
    const file = await bring(people.coordinator, { kind, now }, rows);
    expect((await file.look()).missing).toEqual([]);
    expect((await file.check()).counts).toMatchObject({ new: 2, there: 1, needs: 5 });
    expect(await file.wrong()).toEqual([
      [5, 'forEmail', 'already-invited'],
      [6, 'forEmail', 'missing'],
      [7, 'forEmail', 'email-invalid'],
      [8, 'siteIds', 'intake-unknown'],
      [9, 'siteIds', 'missing-choice'],
    ]);
    expect((await file.add()).counts).toMatchObject({ added: 2 });
    expect(await invitationOf('moss@example.org')).toMatchObject({
      ...{ name: 'Moss Ferrant', role: 'member', siteNames: ['Mill Lane Garden', 'Quarry Farm'] },
    });
    expect(await accounts()).toEqual(before);
    const again = await bring(people.coordinator, { kind, now }, rows);
    expect((await again.check()).counts).toMatchObject({ new: 0, there: 3 });
    await join('moss@example.org', 'Moss Ferrant');
    expect((await (await bring(people.coordinator, { kind, now }, rows)).check()).counts).toMatchObject({
      new: 0,
      there: 3,
    });
  });

  it('asks once before it makes coordinators, and takes the name from its parts and the site from the table', async () => {
    const rows = table(
      ['Nombre', 'Apellidos', 'Correo electrónico', 'Papel'],
      ['Brisa', 'del Monte', 'brisa@example.org', 'coordinadora'],
      ['Sauce', 'Ribera', 'sauce@example.org', ''],
    );
    const file = await bring(people.coordinator, { kind, now, siteId: people.millLane }, rows);
    expect((await file.check()).counts).toMatchObject({ new: 1, needs: 1 });
    const { questions } = await readAs(people.coordinator, (context) => openPoints(context, file.id));
    expect(questions.map(({ question }) => question.code)).toEqual(['intake-coordinator']);
    await settlePoints(people.coordinator, file.id, {}, ['intake-coordinator']);
    expect((await file.check()).counts).toMatchObject({ new: 2 });
    await file.add();
    expect(await invitationOf('brisa@example.org')).toMatchObject({ name: 'Brisa del Monte', siteNames: [] });
    expect(await invitationOf('sauce@example.org')).toMatchObject({ siteNames: ['Mill Lane Garden'] });
  });

  it('is for coordinators: a member can neither bring one nor see one of their own site', async () => {
    const bytes = new TextEncoder().encode(table(['Name', 'E-mail'], ['Reed Holm', 'reed@example.org']));
    const asked = { kind, siteId: people.millLane, fileName: 'people.csv' };
    expect(await keepFile(people.member, asked, bytes)).toEqual({ kind: 'not-found' });
    const file = await bring(
      people.coordinator,
      { kind, now, siteId: people.millLane },
      'Name,E-mail\nReed Holm,reed@example.org',
    );
    await file.check();
    const seen = await readAs(people.member, async ({ db }) => [
      await db.intakeFile.count({ where: { id: file.id } }),
      await db.intakeRow.count({ where: { fileId: file.id } }),
      await db.intakeContent.count({ where: { id: file.id } }),
    ]);
    expect(seen).toEqual([0, 0, 0]);
    expect(await startJob(people.member, file.id, 'check', now)).toEqual({ kind: 'not-found' });
    const sneaked = await writeAs(people.member, {}, async ({ db, actor }) => {
      const data = { networkId: actor.networkId, kind, fileName: 'x', byteCount: 1, sha256: '', layout: {} };
      await db.intakeFile.create({ data: { ...data, createdById: actor.personId } });
      return ok(null);
    });
    expect(sneaked).toEqual({ kind: 'not-found' });
  });
});

describe('an open invitation', () => {
  const invite = (email: string) =>
    runAs(people.coordinator, invitePersonInput, invitePerson, {
      ...{ role: 'member', siteIds: [people.millLane], forName: 'Vetch Harrow', forEmail: email },
    });

  it('gets a new link, which ends the one before and works again after it ran out', async () => {
    const made = await invite('vetch@example.org');
    if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
    expect(await invite('vetch@example.org')).toEqual(invalid('forEmail', 'already-invited'));
    await admin.query('update invitation set expires_at = now() where id = $1', [made.value.id]);
    expect(await lookUpInvitation(made.value.token)).toBeUndefined();
    expect(await invitationOf('vetch@example.org')).toMatchObject({ expired: expect.any(Boolean) });
    const renewed = await renew(made.value.id);
    if (renewed.kind !== 'ok') throw new Error(JSON.stringify(renewed));
    expect(await lookUpInvitation(made.value.token)).toBeUndefined();
    expect(await lookUpInvitation(renewed.value.token)).toMatchObject({ forName: 'Vetch Harrow' });
    await join('vetch@example.org', 'Vetch Harrow');
    expect(await renew(made.value.id)).toEqual({ kind: 'not-found' });
    expect(await invite('vetch@example.org')).toEqual(invalid('forEmail', 'already-member'));
  });

  it('of a table gets its first link once, all of them in one go, and no other invitation a new one', async () => {
    const handed = await invite('handed@example.org');
    if (handed.kind !== 'ok') throw new Error(JSON.stringify(handed));
    const rows = table(
      ['Name', 'E-mail'],
      ['Rue Calder', 'rue@example.org'],
      ['Yew Calder', 'yew@example.org'],
    );
    const file = await bring(people.coordinator, { kind, now, siteId: people.millLane }, rows);
    await file.check();
    await file.add();
    expect(await invitationOf('rue@example.org')).toMatchObject({ linkless: true });
    const make = () => runAs(people.coordinator, firstLinksInput, makeFirstLinks, {});
    const made = await make();
    if (made.kind !== 'ok') throw new Error(JSON.stringify(made));
    const rue = made.value.find(({ email }) => email === 'rue@example.org');
    expect(made.value.map(({ email }) => email)).toContain('yew@example.org');
    expect(await lookUpInvitation(rue?.token ?? '')).toMatchObject({ forName: 'Rue Calder' });
    expect(await lookUpInvitation(handed.value.token)).toMatchObject({ forName: 'Vetch Harrow' });
    expect(await invitationOf('rue@example.org')).toMatchObject({ linkless: false });
    expect(await make()).toEqual({ kind: 'ok', value: [] });
  });

  it('that is taken back leaves neither name nor address, here or in the table it came from', async () => {
    const rows = table(
      ['Name', 'E-mail', 'Sites'],
      ['Ivory Skerry', 'ivory@example.org', 'MILL'],
      ['Burnet Loy', 'burnet@example.org', 'MILL'],
    );
    const file = await bring(people.coordinator, { kind, now }, rows);
    await file.check();
    await file.add();
    const id = (await invitationOf('ivory@example.org'))?.id ?? '';
    const again = await bring(people.coordinator, { kind, now }, rows);
    await again.check();
    const take = (who: 'coordinator' | 'member' | 'stranger') =>
      runAs(people[who], invitationInput, withdrawInvitation, { id });
    expect(await take('member')).toEqual({ kind: 'not-found' });
    expect(await take('stranger')).toEqual({ kind: 'not-found' });
    expect(await take('coordinator')).toEqual({ kind: 'ok', value: { id } });
    expect(await take('coordinator')).toEqual({ kind: 'not-found' });
    expect(await holding('Ivory Skerry', 'ivory@example.org')).toEqual([]);
    expect(await holding('burnet@example.org')).toContain('invitation');
    expect((await again.check()).counts).toMatchObject({ new: 0, there: 1, needs: 0 });
  });
});

it('whoever leaves is in no table of people any more, by whatever name it called them', async () => {
  const rows = table(
    ['Vorname', 'Last name', 'E-mail', 'Sites', 'Phone'],
    ['Tansy', 'Oakshott', 'tansy@example.org', 'MILL', '555 0199'],
    ['Campion', 'Leigh', 'campion@example.org', 'MILL', '555 0100'],
  );
  const file = await bring(people.coordinator, { kind, now }, rows.replace('Vorname', 'First name'));
  await file.check();
  expect((await file.add()).counts).toMatchObject({ added: 2 });
  const leaver = await join('tansy@example.org', 'Tansy Elspeth Oakshott');
  expect(await leaveNetwork(leaver, leaver.networkId, leaver.networkId)).toMatchObject({ kind: 'ok' });
  expect(await holding('Oakshott', 'tansy@example.org', '555 0199')).toEqual([]);
  expect(await holding('campion@example.org')).toEqual(['intake_row', 'invitation']);
});
