import path from 'node:path';
import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { leaveNetwork } from '@/lib/access/leave-network';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { lookUpSession } from '@/lib/access/session-lookup';
import { writePersonArchive } from '@/lib/export/person/write-person-archive';
import { getBatch } from '@/lib/records/batch/get-batch.query';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { listHistory } from '@/lib/records/history/list-history.query';
import { erasePerson } from '@/lib/records/person/erase-person.command';
import { erasePersonInput } from '@/lib/records/person/erase-person.input';
import { getLeaving } from '@/lib/records/person/get-leaving.query';
import { listPeople } from '@/lib/records/person/list-people.query';
import { testDatabase } from '../../support/database';
import { newcomer } from '../../support/newcomer';
import { twentyBags } from '../../support/shed';
import { temporaryFolder } from '../../support/temporary-folder';
import { arrange, makeWorld, now, type World } from '../world';
import { holding as holdingOf } from './holding';

const { superuser } = await testDatabase();
const folder = temporaryFolder('pinset-test');
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

  it('is not kept from leaving by a count that takes too long', async () => {
    const leaver = await joins('Mallow Quince');
    // A lock that is waited for is time that passes, as it does over very many words.
    await admin.query('begin');
    await admin.query('lock table sale in access exclusive mode');
    const leaving = await readAs(leaver, async (context) => {
      const told = await getLeaving(context, 'own');
      const [limit] = await context.db.$queryRaw<
        { now: string }[]
      >`select current_setting('statement_timeout') as now`;
      return { told, limit: limit?.now };
    });
    await admin.query('rollback');
    expect(leaving).toMatchObject({ told: { name: 'Mallow Quince', mentions: null }, limit: '15s' });
  }, 60_000);

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
