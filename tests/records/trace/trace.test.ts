import { beforeAll, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { getTrace } from '@/lib/records/trace/get-trace.query';
import type { TracedKind } from '@/lib/records/trace/trace-link';
import type { Trace } from '@/lib/records/trace/trace-view';
import { whereItWent } from '@/lib/records/trace/where-it-went';
import { voidRecord } from '@/lib/records/void/void-record.command';
import { voidRecordInput } from '@/lib/records/void/void-record.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { find, lose, startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
let bags: string;
let others: string;
let bed: string;
let crate: string;

const now = { now: testDay };

async function trace(kind: TracedKind, id: string, actor: Actor = people.coordinator): Promise<Trace> {
  const found = await readAs(actor, (context) => getTrace(context, kind, id));
  if (!found) throw new Error('not there');
  return found;
}

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  bags = await startBags(people, stock);
  others = await startBags(people, stock, { spawn: [{ lotId: stock.secondOysterSpawn, mass: 1_000 }] });
  await find(people.member, bags, { action: 'discarded' });
  await lose(people.member, bags);
  const weighed = await runAs(
    people.member,
    recordWeighingInput,
    recordWeighing,
    {
      ...{ weighedOn: '2026-05-04', fresh: 3_000, sold: 2_000 },
      lines: [
        { batchId: bags, flush: 1, mass: 1_800 },
        { batchId: others, flush: 1, mass: 1_200 },
      ],
    },
    now,
  );
  if (weighed.kind !== 'ok') throw new Error(JSON.stringify(weighed));
  crate = weighed.value.id;
  const moved = await runAs(
    people.coordinator,
    startSecondLifeInput,
    startSecondLife,
    {
      ...{ siteId: people.quarry, speciesId: stock.oyster, containerKind: 'bed', unitCount: 1 },
      ...{ inoculatedOn: '2026-05-18', moistureSource: 'none', bedArea: { text: '2', unit: 'm2' } },
      sources: [{ batchId: bags, units: 12 }],
    },
    now,
  );
  if (moved.kind !== 'ok') throw new Error(JSON.stringify(moved));
  bed = moved.value.id;
});

describe('where a spawn lot went', () => {
  it('counts by site what stands, what was lost and why, and what was picked, second lives followed', async () => {
    const { on, start } = await trace('spawn-lot', stock.oysterSpawn);
    expect(start).toMatchObject({ code: 'SP-1', visible: true });
    const went = whereItWent(on);
    expect(went.sites).toMatchObject([
      { siteName: 'Mill Lane Garden', batches: 1, open: 1, live: 5, contaminated: 2, lostClean: 1 },
      { siteName: 'Quarry Farm', batches: 1, open: 1, live: 1 },
    ]);
    expect(went.all).toMatchObject({ batches: 2, open: 2, live: 6, freshGrams: on.harvests[0]?.tracedGrams });
    expect([...went.signs]).toEqual([['green', 2]]);
    expect([...went.causes]).toEqual([['dried_out', 1]]);
  });

  it('says of a crate with other batches in it that it holds them, and counts its destinations whole', async () => {
    const { on } = await trace('spawn-lot', stock.oysterSpawn);
    expect(on.harvests).toMatchObject([{ id: crate, freshGrams: 3_000, mixed: true, batchIds: [bags] }]);
    expect(whereItWent(on)).toMatchObject({ notSaid: 1_000, mixedCrates: 1 });
    expect([...whereItWent(on).destinations]).toEqual([['sold', 2_000]]);
  });

  it('shows a member what happened at the own sites, and of other sites the code and the name', async () => {
    const { on, names } = await trace('spawn-lot', stock.oysterSpawn, people.member);
    expect(on.batches.map(({ id }) => id)).toEqual([bags]);
    expect(names.get(bed)).toMatchObject({ visible: false, siteName: 'Quarry Farm', what: null });
    const there = await trace('spawn-lot', stock.oysterSpawn, people.neighbour);
    expect(there.on.batches).toEqual([]);
  });
});

describe('where a harvest came from', () => {
  it('names every batch in the crate, their spawn, material and bath', async () => {
    const { back, names } = await trace('weighing', crate);
    expect(new Set(back.batches.map(({ id }) => id))).toEqual(new Set([bags, others]));
    const reached = new Set(back.links.map(({ from }) => names.get(from.id)?.code));
    for (const code of ['SP-1', 'SP-2', 'STRAW-1', 'BATH-1']) expect(reached).toContain(code);
  });

  it('follows a second life back to the first one and its spawn', async () => {
    const { back, names } = await trace('batch', bed);
    const reached = back.links.map(({ from }) => names.get(from.id)?.code);
    expect(reached).toContain('SP-1');
    expect(reached).not.toContain('SP-2');
  });
});

describe('what does not count any more', () => {
  it('is told with its reason and not followed', async () => {
    const batchId = await startBags(people, stock);
    await runAs(people.member, voidRecordInput, voidRecord, {
      ...{ kind: 'batch', id: batchId, revision: 1, reason: 'Entered twice' },
    });
    const { on } = await trace('spawn-lot', stock.oysterSpawn);
    expect(on.batches.map(({ id }) => id)).not.toContain(batchId);
    expect(on.takenOut).toMatchObject([{ to: { id: batchId }, voided: 'Entered twice' }]);
  });

  it('is told of a second life at a site out of sight, too', async () => {
    const batchId = await startBags(people, stock);
    const made = await runAs(
      people.coordinator,
      startSecondLifeInput,
      startSecondLife,
      {
        ...{ siteId: people.quarry, speciesId: stock.oyster, containerKind: 'bed', unitCount: 1 },
        ...{ inoculatedOn: '2026-05-18', moistureSource: 'none', bedArea: { text: '2', unit: 'm2' } },
        sources: [{ batchId, units: 20 }],
      },
      now,
    );
    if (made.kind !== 'ok') throw new Error(made.kind);
    await runAs(people.coordinator, voidRecordInput, voidRecord, {
      ...{ kind: 'batch', id: made.value.id, revision: 1, reason: 'Never moved' },
    });
    const { on, names } = await trace('batch', batchId, people.member);
    expect(on.links).toEqual([]);
    expect(on.batches).toMatchObject([{ id: batchId, live: 20, moved: 0 }]);
    expect(on.takenOut).toMatchObject([{ to: { id: made.value.id }, voided: '' }]);
    expect(names.has(made.value.id)).toBe(false);
  });
});

it('there is no trace for a funder, for another network, or of what is not there', async () => {
  for (const actor of [people.funder, people.stranger])
    expect(await readAs(actor, (context) => getTrace(context, 'batch', bags))).toBeUndefined();
  expect(await readAs(people.neighbour, (context) => getTrace(context, 'batch', bags))).toBeUndefined();
  expect(await readAs(people.member, (context) => getTrace(context, 'weighing', bags))).toBeUndefined();
});
