import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { addDays } from '@/lib/growing/calendar-date';
import { recordCheckInput } from '@/lib/records/check/check.input';
import { recordCheck } from '@/lib/records/check/record-check.command';
import { changeMethod } from '@/lib/records/settings/change-method.command';
import { changeWindow } from '@/lib/records/settings/change-window.command';
import { changeMethodInput, changeWindowInput } from '@/lib/records/settings/settings.input';
import type { DueLine } from '@/lib/records/today/due-line';
import { listDue } from '@/lib/records/today/list-due.query';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { lose, startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { shed } from '../../support/shed';

const { superuser } = await testDatabase();

let tags = 0;
/** A pair of networks of their own for each test, so that no batch of another one is due. */
async function start() {
  tags += 1;
  const people = await growers(superuser, String(tags));
  return { people, stock: await shed(people) };
}
type World = Awaited<ReturnType<typeof start>>;

const due = ({ people }: World, on: string, who: 'member' | 'neighbour' | 'coordinator' = 'member') =>
  readAs(people[who], (context) => listDue(context, new Date(`${on}T15:00:00Z`)));
const batchKinds = (lines: readonly DueLine[]) =>
  lines.flatMap((line) => (line.of === 'batch' ? [`${line.urgency} ${line.due.kind}`] : []));
const bags = ({ people, stock }: World, inoculatedOn = '2026-04-01') =>
  startBags(people, stock, { inoculatedOn });
const pick = ({ people }: World, batchId: string, weighedOn: string) =>
  runAs(
    people.member,
    recordWeighingInput,
    recordWeighing,
    { weighedOn, fresh: 2_000, lines: [{ batchId, flush: 1 }] },
    { now: testDay },
  );
const seen = ({ people }: World, batchId: string, kind: string, checkedOn: string) =>
  runAs(people.member, recordCheckInput, recordCheck, { batchId, checkedOn, kind }, { now: testDay });

describe('what is due', () => {
  it('of a batch goes from the first look to its harvest by the days of its species and container', async () => {
    const world = await start();
    await bags(world);
    expect(batchKinds(await due(world, '2026-04-02'))).toEqual([]);
    expect(batchKinds(await due(world, '2026-04-12'))).toEqual(['today first-look', 'soon colonised']);
    expect(batchKinds(await due(world, '2026-04-20'))).toEqual(['overdue first-look', 'today pins']);
    expect(batchKinds(await due(world, '2026-05-01'))).toEqual(['today window-look', 'today first-harvest']);
  });

  it('follows the days that the network has set', async () => {
    const world = await start();
    await bags(world);
    const { coordinator } = world.people;
    const window = await readAs(coordinator, ({ db }) =>
      db.assessmentWindow.findFirstOrThrow({
        where: { speciesId: world.stock.oyster, containerKind: 'bag' },
      }),
    );
    const raw = {
      ...{ id: window.id, revision: window.revision, reason: 'our own days' },
      ...{ contaminationDays: 20, yieldDays: 90, firstLookDays: 5 },
      ...{ firstHarvestFromDays: 50, firstHarvestToDays: 60 },
    };
    const changed = await runAs(coordinator, changeWindowInput, changeWindow, raw);
    expect(changed.kind).toBe('ok');
    expect(batchKinds(await due(world, '2026-04-07'))).toEqual(['today first-look']);
    expect(batchKinds(await due(world, '2026-05-21'))).toEqual([
      'overdue window-look',
      'today first-harvest',
    ]);
  });

  it('tells a site its own days once five of its batches were picked', async () => {
    const world = await start();
    for (const [index, days] of [21, 22, 23, 24, 26, 25].entries()) {
      const inoculatedOn = addDays('2026-03-31', index);
      await pick(world, await bags(world, inoculatedOn), addDays(inoculatedOn, days));
    }
    const batchId = await bags(world, '2026-04-20');
    const lines = await due(world, '2026-05-12');
    const line = lines.find(
      (one) => one.of === 'batch' && one.batchId === batchId && one.due.kind !== 'first-look',
    );
    expect(line?.due).toMatchObject({
      kind: 'first-harvest',
      from: '2026-05-11',
      to: '2026-05-16',
      own: { from: 21, to: 26, median: 23.5, batches: 6 },
    });
  });

  it('moves on with what is written down: colonised, pins, a picking, nothing left', async () => {
    const world = await start();
    const batchId = await bags(world);
    await seen(world, batchId, 'fully_colonised', '2026-04-14');
    expect(batchKinds(await due(world, '2026-04-18'))).toContain('today pins');
    await seen(world, batchId, 'pins_seen', '2026-04-18');
    expect(batchKinds(await due(world, '2026-04-18'))).not.toContain('today pins');
    expect(batchKinds(await due(world, '2026-04-22'))).toContain('today first-harvest');
    await pick(world, batchId, '2026-04-22');
    expect(batchKinds(await due(world, '2026-05-01'))).toContain('today next-flush');
    await lose(world.people.member, batchId, { units: 20, lostOn: '2026-05-02' });
    expect(batchKinds(await due(world, '2026-05-03'))).toEqual(['idle none-left']);
  });

  it('of a batch that fell silent is to close it', async () => {
    const world = await start();
    await pick(world, await bags(world), '2026-05-01');
    expect(batchKinds(await due(world, '2026-06-01'))).toEqual(['idle quiet']);
  });

  it('names the clocks that run before everything else, and loads that wait for spawn', async () => {
    const world = await start();
    await bags(world);
    const { people, stock } = world;
    const treat = (changes: object) =>
      runAs(
        people.member,
        startTreatmentInput,
        startTreatment,
        { siteId: people.millLane, methodId: stock.lime, startedAt: '2026-05-20T08:00:00Z', ...changes },
        { now: testDay },
      );
    await treat({});
    await treat({ startedAt: '2026-05-18T08:00:00Z', endedAt: '2026-05-18T16:00:00Z' });
    const lines = await due(world, '2026-05-20');
    // The bath of the shed was never ended, and nobody has read it since March.
    expect(lines.map(({ due: { kind } }) => kind).slice(0, 2)).toEqual(['lime-lift', 'unfinished']);
    expect(lines.map(({ due: { kind } }) => kind)).toContain('load-waiting');
  });

  it('goes by the window that the network has set for a method', async () => {
    const world = await start();
    const { people, stock } = world;
    const soak = { siteId: people.millLane, methodId: stock.lime, startedAt: '2026-05-20T12:00:00Z' };
    await runAs(people.member, startTreatmentInput, startTreatment, soak, { now: testDay });
    const kind = async () => (await due(world, '2026-05-20'))[0]?.due.kind;
    expect(await kind()).toBe('lime-soaking');
    const method = await readAs(people.coordinator, ({ db }) =>
      db.method.findFirstOrThrow({ where: { id: stock.lime } }),
    );
    const raw = {
      ...{ id: method.id, revision: method.revision, reason: 'stronger lime' },
      ...{ nameEn: method.nameEn, nameEs: method.nameEs, minPh: 12, minMinutes: 120, maxMinutes: 400 },
    };
    expect((await runAs(people.coordinator, changeMethodInput, changeMethod, raw)).kind).toBe('ok');
    expect(await kind()).toBe('lime-lift');
  });

  it("is a member's own sites', and all of them the coordinator's", async () => {
    const world = await start();
    await bags(world);
    expect(await due(world, '2026-05-01', 'neighbour')).toEqual([]);
    expect(batchKinds(await due(world, '2026-05-01', 'coordinator'))).toHaveLength(2);
  });
});
