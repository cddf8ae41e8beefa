import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { leaveNetwork } from '@/lib/access/leave-network';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { lookUpSession } from '@/lib/access/session-lookup';
import { writePersonArchive } from '@/lib/export/person/write-person-archive';
import { mendRow } from '@/lib/intake/table/mend-row';
import { changeLayout } from '@/lib/intake/table/settle';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { listHistory } from '@/lib/records/history/list-history.query';
import { erasePerson } from '@/lib/records/person/erase-person.command';
import { erasePersonInput } from '@/lib/records/person/erase-person.input';
import { getLeaving } from '@/lib/records/person/get-leaving.query';
import { listPeople } from '@/lib/records/person/list-people.query';
import { bring } from '../../intake/table/bring';
import { testDatabase } from '../../support/database';
import { newcomer } from '../../support/newcomer';
import { twentyBags } from '../../support/shed';
import { arrange, makeWorld, now, type World } from '../world';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
}, 180_000);
afterAll(() => admin.end());

/** Tables in any of whose text, JSON or bytes the words stand, of the whole database. */
async function holding(...words: string[]): Promise<string[]> {
  const { rows } = await admin.query<{ table: string; columns: string }>(
    `select c.relname as table, string_agg(case when y.typname = 'bytea' then format('coalesce(encode(%I, ''escape''), '''')', a.attname)
       else format('coalesce(%I::text, '''')', a.attname) end, ' || '' '' || ') as columns
     from pg_class c join pg_attribute a on a.attrelid = c.oid and a.attnum > 0 and not a.attisdropped
     join pg_type y on y.oid = a.atttypid
     where c.relnamespace = 'public'::regnamespace and c.relkind = 'r' and y.typname in ('text', 'varchar', 'json', 'jsonb', '_text', 'bytea')
     group by c.relname`,
  );
  const found: string[] = [];
  for (const { table, columns } of rows) {
    const { rows: counted } = await admin.query<{ n: number }>(
      `select count(*)::int as n from public."${table}" where lower(${columns}) like any ($1)`,
      [words.map((word) => `%${word.toLowerCase()}%`)],
    );
    if ((counted[0]?.n ?? 0) > 0) found.push(table);
  }
  return found.sort();
}

const joins = (name: string) =>
  newcomer(world.people.coordinator, { name, role: 'member', siteIds: [world.people.millLane] });

describe('a person who leaves', () => {
  it('leaves neither name nor address in any text of the database, and records that count as before', async () => {
    const leaver = await joins('Bramble Ottershaw');
    const { id } = await arrange(leaver, startBatchInput, startBatch, twentyBags(world.people, world.stock));
    const sums = async () =>
      (await admin.query('select measure, batches, units from outcome_summary order by 1, 2, 3')).rows;
    const before = await sums();
    expect(await holding('Bramble Ottershaw', leaver.email)).toEqual([
      'invitation',
      'person_contact',
      'session',
    ]);

    expect(await leaveNetwork(leaver, leaver.networkId, leaver.networkId)).toEqual({
      kind: 'ok',
      value: 'gone',
    });

    expect(await holding('Bramble Ottershaw', leaver.email)).toEqual([]);
    expect(await sums()).toEqual(before);
    expect(await lookUpSession(leaver.sessionId)).toBeUndefined();
    const batch = await readAs(world.people.coordinator, (context) => getBatch(context, id, now));
    expect(batch?.batch).toMatchObject({ id });
    const [first] = await readAs(world.people.coordinator, (context) => listHistory(context, id));
    expect(first).toMatchObject({ who: null, byFormerMember: true });
    const people = await readAs(world.people.coordinator, listPeople);
    expect(people.at(-1)).toMatchObject({
      membershipId: leaver.membershipId,
      name: '',
      email: '',
      ended: true,
    });
  }, 60_000);

  it('takes along every record and change of theirs, and nobody else’s', async () => {
    const leaver = await joins('Fern Tallow');
    const { id } = await arrange(leaver, startBatchInput, startBatch, twentyBags(world.people, world.stock));
    const folder = await mkdtemp(path.join(tmpdir(), 'pinset-test-'));
    const counts = await readAs(leaver, (context) =>
      writePersonArchive(context, leaver.personId, path.join(folder, 'a.zip'), now),
    );
    const { rows } = await admin.query<{ n: number }>(
      'select count(*)::int as n from history where person_id = $1',
      [leaver.personId],
    );
    expect(counts).toMatchObject({ batch: 1, changes: rows[0]?.n });
    expect(counts.weighing).toBeUndefined();
    const others = await readAs(world.people.neighbour, (context) =>
      writePersonArchive(context, leaver.personId, path.join(folder, 'b.zip'), now),
    );
    expect(others).toEqual({ changes: 0 });
    await rm(folder, { recursive: true });
    expect(id).toEqual(expect.any(String));
  }, 60_000);

  it('is told where the name stands in words that people wrote', async () => {
    const leaver = await joins('Tansy Vellum');
    await arrange(leaver, startBatchInput, startBatch, {
      ...twentyBags(world.people, world.stock),
      note: 'Filled with Tansy Vellum in the rain',
    });
    const leaving = await readAs(leaver, (context) => getLeaving(context, 'own'));
    // The note and the line of history that copied it.
    expect(leaving).toMatchObject({ mentions: 2, records: [{ table: 'batch', count: 1 }] });
  });

  it('cannot be the last coordinator, even when two leave at the same moment', async () => {
    const other = await newcomer(world.people.stranger, { name: 'Second Hand', role: 'coordinator' });
    const { stranger } = world.people;
    const left = await Promise.all([
      leaveNetwork(stranger, stranger.networkId, stranger.networkId),
      leaveNetwork(other, other.networkId, other.networkId),
    ]);
    expect(left.map(({ kind }) => kind).sort()).toEqual(['invalid', 'ok']);
    expect(left).toContainEqual({ kind: 'invalid', errors: [{ field: '', code: 'last-coordinator' }] });
  });

  it('keeps the sign-in for another network, and is nobody in the one left', async () => {
    const leaver = await joins('Sedge Harrow');
    await admin.query(
      "insert into membership (network_id, person_id, role) values ((select id from network where code = 'SALT'), $1, 'funder')",
      [leaver.personId],
    );
    expect(await leaveNetwork(leaver, leaver.networkId, leaver.networkId)).toEqual({
      kind: 'ok',
      value: 'left',
    });
    expect(await holding('Sedge Harrow')).toEqual(['person_contact']);
    const seen = await readAs(world.people.coordinator, ({ db }) =>
      db.personContact.findMany({ where: { personId: leaver.personId } }),
    );
    expect(seen).toEqual([]);
  });
});

describe('a person erased by the coordinator, having asked', () => {
  const erase = (actor: World['people']['coordinator'], id: string, reason = 'asked by letter') =>
    runAs(actor, erasePersonInput, erasePerson, { id, reason, word: 'Salir' }, { reason });

  it('is gone, with the reason in the history, which must not name them', async () => {
    const leaver = await joins('Rue Cobnut');
    expect(await erase(world.people.coordinator, leaver.membershipId, 'Rue Cobnut asked')).toMatchObject({
      kind: 'invalid',
      errors: [{ field: 'reason', code: 'names-the-person' }],
    });
    expect(await erase(world.people.coordinator, leaver.membershipId)).toEqual({
      kind: 'ok',
      value: { left: 'gone' },
    });
    expect(await holding('Rue Cobnut', leaver.email)).toEqual([]);
    const lines = await readAs(world.people.coordinator, (context) =>
      listHistory(context, leaver.membershipId),
    );
    expect(lines.at(-1)?.reason).toBe('asked by letter');
    expect(await erase(world.people.coordinator, leaver.membershipId)).toEqual({ kind: 'not-found' });
  });

  it('is never the coordinator themselves, nor somebody whom a member wants gone', async () => {
    const { coordinator, member, neighbour } = world.people;
    expect(await erase(coordinator, coordinator.membershipId)).toEqual({ kind: 'not-found' });
    expect(await erase(member, neighbour.membershipId)).toEqual({ kind: 'not-found' });
  });

  it('asks for the word', async () => {
    const raw = { id: world.people.member.membershipId, reason: 'asked', word: 'yes' };
    expect(await runAs(world.people.coordinator, erasePersonInput, erasePerson, raw)).toMatchObject({
      errors: [{ field: 'word', code: 'not-the-word' }],
    });
  });
});

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
    for (const [line, note] of [
      [2, 'a bag'],
      [3, 'A'],
    ] as const)
      await mendRow(coordinator, file.id, {
        line,
        cells: [code ?? '', '2026-05-10', '1.5', note],
        confirmed: [],
      });
    expect((await file.check()).counts).toMatchObject({ new: 2, needs: 0 });
    await leaveNetwork(leaver, leaver.networkId, leaver.networkId);
    expect(await rowsOf(file.id)).toMatchObject([
      { cells: [code, '2026-05-10', '15', 'a bag'], mended: { 2: '1.5' }, state: 'new' },
      { cells: [code, '2026-05-11', '0.5', ''], mended: { 1: '2026-05-10', 2: '1.5' }, state: 'unread' },
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
