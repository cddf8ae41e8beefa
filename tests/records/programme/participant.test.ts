import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { correctParticipant } from '@/lib/records/participant/correct-participant.command';
import { eraseParticipant } from '@/lib/records/participant/erase-participant.command';
import { getParticipant } from '@/lib/records/participant/get-participant.query';
import { listParticipants } from '@/lib/records/participant/list-participants.query';
import { correctParticipantInput, eraseParticipantInput } from '@/lib/records/participant/participant.input';
import { programmeFilterInput } from '@/lib/records/programme/programme-filter.input';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { addPerson, idOf, train } from './programme-records';

const { superuser } = await testDatabase();
const { member, neighbour, millLane } = await growers(superuser);
const admin = new Client({ connectionString: superuser });
beforeAll(() => admin.connect());
afterAll(() => admin.end());

const see = (id: string) => readAs(member, (context) => getParticipant(context, id));
const correct = (raw: object) =>
  runAs(member, correctParticipantInput, correctParticipant, { reason: 'told', ...raw }, { now: testDay });

describe('a participant', () => {
  it('has each consent with the day it was given', async () => {
    const id = idOf(
      await addPerson(member, millLane, 'Bryony Ashdown', { consents: ['counted', 'pictured'] }),
    );
    expect(await see(id)).toMatchObject({
      name: 'Bryony Ashdown',
      consents: { counted: '2026-05-01', named: null, pictured: '2026-05-01' },
    });
  });

  it('may agree to nothing, and then no day is asked for', async () => {
    const id = idOf(await addPerson(member, millLane, 'Cob Heron', { consents: '', agreedOn: '' }));
    expect(await see(id)).toMatchObject({ consents: { counted: null, named: null, pictured: null } });
    expect(await addPerson(member, millLane, 'Dell Hart', { agreedOn: '' })).toMatchObject({
      errors: [{ field: 'agreedOn', code: 'missing' }],
    });
  });

  it('withdraws one consent and keeps the day of another', async () => {
    const id = idOf(await addPerson(member, millLane, 'Elder Quill', { consents: ['counted', 'named'] }));
    const raw = {
      id,
      revision: 1,
      name: 'Elder Quill',
      consents: ['counted', 'pictured'],
      agreedOn: '2026-05-09',
    };
    expect((await correct(raw)).kind).toBe('ok');
    expect(await see(id)).toMatchObject({
      consents: { counted: '2026-05-01', named: null, pictured: '2026-05-09' },
    });
    expect(await correct(raw)).toEqual({ kind: 'conflict', current: 2 });
  });

  it('of a name that is there already is asked about, since each person counts once', async () => {
    idOf(await addPerson(member, millLane, 'Fern Oakley'));
    expect(await addPerson(member, millLane, 'fern oakley')).toMatchObject({
      kind: 'confirm',
      questions: [{ code: 'same-name' }],
    });
    const sure = { confirmed: new Set(['same-name']) };
    expect((await addPerson(member, millLane, 'fern oakley', {}, sure)).kind).toBe('ok');
  });

  it("is not seen by another site's member", async () => {
    const id = idOf(await addPerson(member, millLane, 'Gale Thorn'));
    expect(await readAs(neighbour, (context) => getParticipant(context, id))).toBeUndefined();
  });

  it('is found by a part of the name, and no more once erased', async () => {
    const id = idOf(
      await addPerson(member, millLane, 'Hazel Winterbourne', { consents: ['counted', 'named'] }),
    );
    const find = async () =>
      (
        await readAs(member, (context) =>
          listParticipants(context, programmeFilterInput.parse({ name: 'winterb' })),
        )
      ).participants.length;
    expect(await find()).toBe(1);
    const raw = { id, revision: 1, reason: 'asked to be forgotten' };
    const erased = await runAs(member, eraseParticipantInput, eraseParticipant, raw, { now: testDay });
    expect(erased.kind).toBe('ok');
    expect(await find()).toBe(0);
    expect(await see(id)).toMatchObject({
      name: null,
      erased: true,
      consents: { counted: null, named: null, pictured: null },
    });
  });

  it('leaves no name in the history, nor anywhere else once erased', async () => {
    const id = idOf(await addPerson(member, millLane, 'Ivo Tamarisk'));
    await correct({ id, revision: 1, name: 'Ivo Tamarisk-Lane', consents: 'counted' });
    const { rows: history } = await admin.query(
      `select * from history where coalesce(new_values::text, '') || coalesce(old_values::text, '') ilike '%tamarisk%'`,
    );
    expect(history).toEqual([]);
    await runAs(member, eraseParticipantInput, eraseParticipant, { id, revision: 2, reason: 'asked' });
    const { rows: contacts } = await admin.query(
      `select * from participant_contact where name ilike '%tamarisk%'`,
    );
    expect(contacts).toEqual([]);
  });

  it('cannot be voided while a training counts them', async () => {
    const id = idOf(await addPerson(member, millLane, 'Juno Larch'));
    idOf(await train(member, millLane, { participants: id, headCount: '' }));
    const raw = { kind: 'participant', id, revision: 1, reason: 'twice' };
    expect(await runAs(member, voidRecordInput, voidRecord, raw)).toMatchObject({
      errors: [{ code: 'still-in-use', values: { count: 1 } }],
    });
  });
});
