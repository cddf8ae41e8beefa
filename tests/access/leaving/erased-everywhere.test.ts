import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { joinAsKnown } from '@/lib/access/join';
import { leaveNetwork } from '@/lib/access/leave-network';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { mendRow } from '@/lib/intake/table/mend-row';
import { changeLayout } from '@/lib/intake/table/settle';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { invitePerson } from '@/lib/records/person/invite-person.command';
import { invitePersonInput } from '@/lib/records/person/invite-person.input';
import { bring } from '../../intake/table/bring';
import { testDatabase } from '../../support/database';
import { newcomer } from '../../support/newcomer';
import { makeWorld, now, type World } from '../world';
import { holding as holdingOf } from './holding';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
}, 180_000);
afterAll(() => admin.end());

const holding = (...words: string[]) => holdingOf(admin, ...words);

const joins = (name: string) =>
  newcomer(world.people.coordinator, { name, role: 'member', siteIds: [world.people.millLane] });

describe('tables that wait to be added', () => {
  const asked = { kind: 'harvests', now } as const;
  const rowsOf = (fileId: string) =>
    readAs(world.people.coordinator, ({ db }) =>
      db.intakeRow.findMany({
        where: { fileId },
        orderBy: { line: 'asc' },
        select: { cells: true, mended: true, state: true },
      }),
    );

  it('lose the cells that are the name and nothing else, and what was mended stays', async () => {
    const leaver = await joins('a');
    const { member, coordinator } = world.people;
    const code = (await readAs(member, (context) => getBatch(context, world.batch, now)))?.batch.code;
    const file = await bring(
      coordinator,
      asked,
      `Batch,Date,Fresh (kg),Note\n${code},2026-05-10,15,a bag\n${code},2026-05-11,0.5,A`,
    );
    for (const [line, day, note] of [
      [2, '2026-05-10', 'a bag'],
      [3, '2026-05-12', 'A'],
    ] as const)
      await mendRow(coordinator, file.id, {
        line,
        cells: [code ?? '', day, '1.5', note],
        confirmed: [],
      });
    expect((await file.check()).counts).toMatchObject({ new: 2, needs: 0 });
    await leaveNetwork(leaver, leaver.networkId, leaver.networkId);
    expect(await rowsOf(file.id)).toMatchObject([
      { cells: [code, '2026-05-10', '15', 'a bag'], mended: { 2: '1.5' }, state: 'new' },
      { cells: [code, '2026-05-11', '0.5', ''], mended: { 1: '2026-05-12', 2: '1.5' }, state: 'unread' },
    ]);
  });

  it('keep no copy of the name in the upload, in its headings or its name, nor get it back by being cut anew', async () => {
    const leaver = await joins('Yarrow Pinfold');
    const { coordinator } = world.people;
    const file = await bring(
      coordinator,
      { ...asked, fileName: 'Yarrow_Pinfold-2026.csv' },
      `Batch,Date,Fresh (kg),Yarrow Pinfold\nX-1,2026-05-10,1,${leaver.email}\nX-1,2026-05-11,2,other`,
    );
    const kept = await bring(coordinator, asked, 'Batch,Date,Fresh (kg)\nX-1,2026-05-10,1');
    expect(await leaveNetwork(leaver, leaver.networkId, leaver.networkId)).toMatchObject({ kind: 'ok' });
    expect(await holding('Yarrow Pinfold', 'Yarrow_Pinfold', leaver.email)).toEqual([]);
    const { layout, fileName } = await file.look();
    expect({ headers: layout.headers, fileName }).toEqual({
      headers: ['Batch', 'Date', 'Fresh (kg)', ''],
      fileName: '-',
    });
    expect((await rowsOf(file.id))[1]).toMatchObject({ cells: ['X-1', '2026-05-11', '2', 'other'] });
    const cut = { ...layout, headerLine: 0 };
    expect(await changeLayout(coordinator, file.id, cut)).toEqual({
      kind: 'invalid',
      errors: [{ field: '', code: 'table-erased' }],
    });
    expect(
      await changeLayout(coordinator, kept.id, { ...(await kept.look()).layout, headerLine: 0 }),
    ).toEqual({
      kind: 'ok',
      value: null,
    });
  });
});

describe('leaving with several networks', () => {
  const alsoInSalt = (personId: string, ended: boolean) =>
    admin.query(
      `insert into membership (network_id, person_id, role, ended_at)
       values ((select id from network where code = 'SALT'), $1, 'funder', ${ended ? 'now()' : 'null'})`,
      [personId],
    );

  it('is of the network that was shown, not of one opened meanwhile', async () => {
    const leaver = await joins('Teasel Marlow');
    expect(await leaveNetwork(leaver, leaver.networkId, world.people.stranger.networkId)).toEqual({
      kind: 'invalid',
      errors: [{ field: '', code: 'another-network' }],
    });
    expect(await holding('Teasel Marlow')).toContain('person_contact');
  });

  it('is not told to have happened while none is open and one is left', async () => {
    const leaver = await joins('Burdock Lacey');
    expect(await leaveNetwork(leaver, '', '')).toEqual({ kind: 'not-found' });
    expect(await holding('Burdock Lacey')).toContain('person_contact');
  });

  it('cleans those where the person was ended before, once the last one goes', async () => {
    const leaver = await joins('Comfrey Dunmow');
    await alsoInSalt(leaver.personId, true);
    await admin.query(
      `insert into invitation (network_id, token_hash, role, for_name, expires_at, accepted_at, accepted_by_id)
       values ((select id from network where code = 'SALT'), 'of-comfrey', 'funder', 'Comfrey Dunmow', now(), now(), $1)`,
      [leaver.personId],
    );
    expect(await leaveNetwork(leaver, leaver.networkId, leaver.networkId)).toEqual({
      kind: 'ok',
      value: 'gone',
    });
    expect(await holding('Comfrey Dunmow', leaver.email)).toEqual([]);
  });
});

describe('an invitation', () => {
  it('of the last coordinator to something else is refused with the reason, not an error', async () => {
    const { stranger } = world.people;
    const invited = await runAs(stranger, invitePersonInput, invitePerson, { role: 'funder', siteIds: [] });
    if (invited.kind !== 'ok') throw new Error(JSON.stringify(invited));
    expect(await joinAsKnown(invited.value.token, stranger)).toEqual({
      kind: 'invalid',
      errors: [{ field: '', code: 'last-coordinator' }],
    });
  });

  it('joins nobody to a site that has left', async () => {
    const site = world.people.quarry;
    const { coordinator } = world.people;
    const invited = await runAs(coordinator, invitePersonInput, invitePerson, {
      role: 'member',
      siteIds: [world.people.millLane, site],
    });
    if (invited.kind !== 'ok') throw new Error(JSON.stringify(invited));
    await admin.query('update site set left_at = now() where id = $1', [site]);
    const { personId } = world.people.stranger;
    const joined = await joinAsKnown(invited.value.token, world.people.stranger);
    expect(joined).toMatchObject({ kind: 'ok' });
    const { rows } = await admin.query(
      `select s.site_id from membership_site s join membership m on m.id = s.membership_id
       where m.person_id = $1 and m.network_id = $2`,
      [personId, coordinator.networkId],
    );
    expect(rows).toEqual([{ site_id: world.people.millLane }]);
  });
});
