import { describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { listCountedSites } from '@/lib/records/site/list-counted-sites.query';
import { countOpen } from '@/lib/records/today/count-open.query';
import { type DueWanted, listDue } from '@/lib/records/today/list-due.query';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed, twentyBags } from '../../support/shed';

const { superuser } = await testDatabase();

let tags = 0;
/** Four batches of Mill Lane and one of Quarry Farm, in networks of their own for each test. */
async function start() {
  tags += 1;
  const people = await growers(superuser, String(tags));
  const stock = await shed(people);
  const ids: string[] = [];
  for (const inoculatedOn of ['2026-04-01', '2026-04-02', '2026-05-10', '2026-05-11'])
    ids.push(await startBags(people, stock, { inoculatedOn }));
  await startAtQuarry(people, stock);
  return { people, stock, first: ids[0] ?? '' };
}

function startAtQuarry(people: Growers, stock: Shed) {
  const [usual] = twentyBags(people, stock).components;
  return startBags({ ...people, member: people.neighbour }, stock, {
    ...{ siteId: people.quarry, inoculatedOn: '2026-05-12' },
    components: [{ ...usual, treatment: `method:${stock.untreated}` }],
  });
}

type World = Awaited<ReturnType<typeof start>>;

const noon = (day: string) => new Date(`${day}T18:00:00Z`);
const counts = (actor: Actor, day: string, most: number) =>
  readAs(actor, (context) => countOpen(context, noon(day), { most }));

describe('what is open by site', () => {
  it('is told only to whoever sees to more than are looked through at once', async () => {
    const { coordinator, member, millLane } = (await start()).people;
    expect(await counts(coordinator, '2026-05-20', 5)).toBeUndefined();
    expect((await counts(coordinator, '2026-05-20', 4))?.open).toBe(5);
    expect(await counts(member, '2026-05-20', 4)).toBeUndefined();
    expect((await counts(member, '2026-05-20', 3))?.sites.map(({ siteId }) => siteId)).toEqual([millLane]);
  }, 120_000);

  it('is that of one site where one is asked for, and told by what is open at all of them', async () => {
    const { coordinator, quarry } = (await start()).people;
    const at = (most: number) =>
      readAs(coordinator, (context) => countOpen(context, noon('2026-05-20'), { most, siteId: quarry }));
    const all = await counts(coordinator, '2026-05-20', 4);
    const own = all?.sites.filter(({ siteId }) => siteId === quarry);
    expect(own).toHaveLength(1);
    expect((await at(4))?.sites).toEqual(own);
    expect(await at(5)).toBeUndefined();
  }, 120_000);

  it('counts a batch as not looked at from the day its window ends, with nothing written', async () => {
    const { coordinator } = (await start()).people;
    const at = async (day: string) =>
      (await counts(coordinator, day, 1))?.sites.map(({ open, unlooked }) => `${open} ${unlooked}`);
    const end = await readAs(coordinator, ({ db }) =>
      db.batch.findFirstOrThrow({ orderBy: { inoculatedOn: 'asc' } }),
    );
    const judged = end.contaminationAssessedOn?.toISOString().slice(0, 10) ?? '';
    const next = (days: number) =>
      new Date(Date.parse(`${judged}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
    expect(await at(next(-1))).toEqual(['4 0', '1 0']);
    expect(await at(judged)).toEqual(['4 1', '1 0']);
    expect(await at(next(1))).toEqual(['4 2', '1 0']);
  }, 120_000);

  it('leaves out voided batches, and so does the count of a site', async () => {
    const { people, first }: World = await start();
    const { coordinator, millLane, quarry } = people;
    const counted = async () => {
      const sites = await readAs(coordinator, listCountedSites);
      return [millLane, quarry].map((own) => sites.find(({ id }) => id === own)?.batchCount);
    };
    expect(await counted()).toEqual([4, 1]);
    const raw = { kind: 'batch', id: first, revision: 1, reason: 'entered twice' };
    const done = await runAs(coordinator, voidRecordInput, voidRecord, raw, { now: testDay });
    expect(done.kind).toBe('ok');
    expect((await counts(coordinator, '2026-05-20', 1))?.open).toBe(4);
    expect(await counted()).toEqual([3, 1]);
  }, 120_000);
});

describe('what is remembered of what is open', () => {
  it('follows each write, at whichever site, and no more than that', async () => {
    const { people, stock, first } = await start();
    const { coordinator, millLane, quarry } = people;
    const at = async () => {
      const counted = await counts(coordinator, '2026-05-20', 1);
      return [millLane, quarry].map((own) => counted?.sites.find(({ siteId }) => siteId === own)?.open);
    };
    expect(await at()).toEqual([4, 1]);
    const raw = { kind: 'batch', id: first, revision: 1, reason: 'entered twice' };
    expect((await runAs(coordinator, voidRecordInput, voidRecord, raw, { now: testDay })).kind).toBe('ok');
    expect(await at()).toEqual([3, 1]);
    await startBags(people, stock, { inoculatedOn: '2026-05-13' });
    expect(await at()).toEqual([4, 1]);
    expect(await at()).toEqual([4, 1]);
    await startAtQuarry(people, stock);
    expect(await at()).toEqual([4, 2]);
  }, 120_000);
});

describe('what is due', () => {
  it('can be asked of one site, or of the treatment runs alone', async () => {
    const { people } = await start();
    const places = async (wanted: DueWanted) => {
      const lines = await readAs(people.coordinator, (context) =>
        listDue(context, noon('2026-06-20'), wanted),
      );
      return new Set(lines.map(({ siteId, of }) => `${of} ${siteId}`));
    };
    const { millLane, quarry } = people;
    const atMillLane = [`batch ${millLane}`, `run ${millLane}`];
    expect(await places({})).toEqual(new Set([...atMillLane, `batch ${quarry}`]));
    expect(await places({ siteId: millLane })).toEqual(new Set(atMillLane));
    expect(await places({ siteId: quarry })).toEqual(new Set([`batch ${quarry}`]));
    expect(await places({ runsOnly: true })).toEqual(new Set([`run ${millLane}`]));
  }, 120_000);
});
