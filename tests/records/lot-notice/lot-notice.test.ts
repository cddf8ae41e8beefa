import { Client } from 'pg';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { listLotNotices } from '@/lib/records/lot-notice/list-lot-notices.query';
import { listNoticeSites } from '@/lib/records/lot-notice/list-notice-sites.query';
import { listStandingNotices } from '@/lib/records/lot-notice/list-standing-notices.query';
import { listToldLots } from '@/lib/records/lot-notice/list-told-lots.query';
import { listUnreadNotices } from '@/lib/records/lot-notice/list-unread-notices.query';
import {
  markNoticeReadInput,
  withdrawNoticeInput,
  writeNoticeInput,
} from '@/lib/records/lot-notice/lot-notice.input';
import { markNoticeRead } from '@/lib/records/lot-notice/mark-notice-read.command';
import { withdrawNotice } from '@/lib/records/lot-notice/withdraw-notice.command';
import { writeNotice } from '@/lib/records/lot-notice/write-notice.command';
import { startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { moreMembers } from '../../support/more-members';
import { historyOf, type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
let colleague: Actor;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  await startBags(people, stock);
  const [one] = await moreMembers(superuser, people.member, 1);
  if (!one) throw new Error('no colleague');
  colleague = one;
});

const now = { now: testDay };
const notice = (changes: object = {}) => ({
  ...{ lotKind: 'spawn-lot', lotId: stock.oysterSpawn, siteIds: [people.millLane] },
  ...{
    whatHappened: 'Green bags at three sites',
    whatToDo: 'Keep the rest apart and look daily',
    ...changes,
  },
});
const write = (changes: object = {}, actor: Actor = people.coordinator) =>
  runAs(actor, writeNoticeInput, writeNotice, notice(changes), now);
const read = (noticeId: string, actor: Actor) =>
  runAs(actor, markNoticeReadInput, markNoticeRead, { noticeId }, now);
const withdraw = (id: string, actor: Actor = people.coordinator) =>
  runAs(actor, withdrawNoticeInput, withdrawNotice, { id, revision: 1, reason: 'It was the bath' }, now);
const unread = async (actor: Actor) => (await readAs(actor, listUnreadNotices)).map(({ id }) => id);
const ofLot = (actor: Actor) =>
  readAs(actor, (context) => listLotNotices(context, 'spawn-lot', stock.oysterSpawn));

let id: string;
beforeEach(async () => {
  const written = await write();
  if (written.kind !== 'ok') throw new Error(JSON.stringify(written));
  id = written.value.id;
});

describe('a notice about a lot', () => {
  it('stands before the members of its sites until each has marked it read, and before nobody else', async () => {
    expect(await unread(people.member)).toContain(id);
    expect(await unread(colleague)).toContain(id);
    for (const actor of [people.neighbour, people.funder, people.stranger, people.coordinator])
      expect(await unread(actor)).not.toContain(id);
    expect(await read(id, people.member)).toMatchObject({ kind: 'ok' });
    expect(await unread(people.member)).not.toContain(id);
    expect(await unread(colleague)).toContain(id);
  });

  it('tells the coordinator by site who has read it, when, and who has not', async () => {
    await read(id, people.member);
    const [found] = await ofLot(people.coordinator);
    expect(found).toMatchObject({ id, whatToDo: 'Keep the rest apart and look daily', withdrawn: null });
    expect(found?.readers).toHaveLength(1);
    expect(found?.readers?.[0]).toMatchObject({
      siteName: 'Mill Lane Garden',
      read: [{ name: people.member.name, at: testDay.toISOString() }],
    });
    expect(found?.readers?.[0]?.notYet).toHaveLength(1);
    const [own] = await ofLot(people.member);
    expect(own).toMatchObject({ id, readers: null, readAt: testDay.toISOString() });
  });

  it('is told of its lot with how many sites have read it, the latest only and none withdrawn', async () => {
    const told = () => readAs(people.coordinator, listToldLots);
    const about = { lotId: stock.oysterSpawn, noticeId: id };
    expect(await told()).toEqual([{ ...about, sites: 1, readSites: 0 }]);
    await read(id, people.member);
    await read(id, colleague);
    expect(await told()).toEqual([{ ...about, sites: 1, readSites: 1 }]);
    await withdraw(id);
    expect((await told()).map(({ noticeId }) => noticeId)).not.toContain(id);
  });

  it('is marked read once, however often it is pressed, also by two at the same time', async () => {
    const answers = await Promise.all([read(id, people.member), read(id, people.member)]);
    expect(answers).toMatchObject([{ kind: 'ok' }, { kind: 'ok' }]);
    const rows = await readAs(people.coordinator, ({ db }) =>
      db.lotNoticeRead.count({ where: { noticeId: id } }),
    );
    expect(rows).toBe(1);
  });

  it('is not there for another site, another network and a funder, neither to read nor to mark', async () => {
    for (const actor of [people.neighbour, people.stranger, people.funder]) {
      expect(await ofLot(actor)).toEqual([]);
      expect(await read(id, actor)).toEqual({ kind: 'not-found' });
      expect((await readAs(actor, listStandingNotices)).map((one) => one.id)).not.toContain(id);
    }
  });

  it('can be withdrawn with a reason; then nobody is asked to read it, and it stays told', async () => {
    await read(id, people.member);
    expect(await withdraw(id, people.member)).toEqual({ kind: 'not-found' });
    expect(await withdraw(id)).toMatchObject({ kind: 'ok', value: { lotId: stock.oysterSpawn } });
    expect(await withdraw(id)).toMatchObject({ kind: 'ok' });
    expect(await unread(colleague)).not.toContain(id);
    expect((await readAs(colleague, listStandingNotices)).map((one) => one.id)).not.toContain(id);
    const [found] = await ofLot(people.coordinator);
    expect(found).toMatchObject({ id, withdrawn: { reason: 'It was the bath' } });
    expect(found?.readers?.[0]?.read).toHaveLength(1);
    const history = await historyOf(people.coordinator, id);
    expect(history.map(({ action }) => action)).toEqual(['created', 'changed']);
  });

  it('meets a conflict when it was changed meanwhile', async () => {
    const stale = { id, revision: 2, reason: 'It was the bath' };
    expect(await runAs(people.coordinator, withdrawNoticeInput, withdrawNotice, stale, now)).toEqual({
      kind: 'conflict',
      current: 1,
    });
  });
});

describe('writing a notice', () => {
  it('twice with the same id is once', async () => {
    const own = newId();
    expect(await write({ id: own })).toMatchObject({ kind: 'ok', value: { id: own } });
    expect(await write({ id: own })).toMatchObject({ kind: 'ok', value: { id: own } });
    expect((await ofLot(people.coordinator)).filter((one) => one.id === own)).toHaveLength(1);
  });

  it.each([
    ['no site', { siteIds: [] }, 'siteIds', 'missing-choice'],
    [
      'a site that is not there',
      { siteIds: ['0198f2c4-0000-7000-8000-000000000001'] },
      'siteIds',
      'not-an-option',
    ],
    ['no word of what happened', { whatHappened: ' ' }, 'whatHappened', 'missing'],
    ['no word of what to do', { whatToDo: '' }, 'whatToDo', 'missing'],
  ])('refuses %s', async (_what, changes, field, code) => {
    expect(await write(changes)).toMatchObject({ kind: 'invalid', errors: [{ field, code }] });
  });

  it('is for the coordinator of the network alone, and about a lot that is there', async () => {
    for (const actor of [people.member, people.funder, people.stranger])
      expect(await write({}, actor)).toEqual({ kind: 'not-found' });
    expect(await write({ lotId: stock.straw })).toEqual({ kind: 'not-found' });
    expect(await write({ lotKind: 'substrate-lot', lotId: stock.straw })).toMatchObject({ kind: 'ok' });
  });

  it('proposes the sites that have batches of the lot, and says how many', async () => {
    const choices = (actor: Actor) =>
      readAs(actor, (context) => listNoticeSites(context, 'spawn-lot', stock.oysterSpawn));
    expect(await choices(people.coordinator)).toMatchObject({
      lotCode: 'SP-1',
      sites: [
        { id: people.millLane, batches: 1, open: 1, received: false },
        { id: people.quarry, batches: 0, open: 0 },
      ],
    });
    expect(await choices(people.member)).toBeUndefined();
  });
});

// Last: it lets the site leave that the others write to.
it('goes to the sites that are there, and names those that had the lot and have left', async () => {
  const admin = new Client({ connectionString: superuser });
  await admin.connect();
  await admin.query('update site set left_at = now() where id = $1', [people.millLane]);
  await admin.end();
  const choices = await readAs(people.coordinator, (context) =>
    listNoticeSites(context, 'spawn-lot', stock.oysterSpawn),
  );
  expect(choices?.sites.map((site) => site.id)).toEqual([people.quarry]);
  expect(choices?.left).toEqual(['Mill Lane Garden']);
  expect(await write({ siteIds: [people.millLane] })).toMatchObject({
    kind: 'invalid',
    errors: [{ field: 'siteIds', code: 'not-an-option' }],
  });
  expect(await write({ siteIds: [people.quarry] })).toMatchObject({ kind: 'ok' });
});
