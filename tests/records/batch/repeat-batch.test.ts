import { beforeEach, describe, expect, it } from 'vitest';
import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { getRepeat } from '@/lib/records/batch/get-repeat.query';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { listStartFacts } from '@/lib/records/batch/list-start-facts.query';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { receiveSpawn } from '@/lib/records/spawn-lot/receive-spawn.command';
import { receiveSpawnInput } from '@/lib/records/spawn-lot/spawn-lot.input';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import { startTreatmentInput } from '@/lib/records/treatment/treatment.input';
import { repeatValues } from '@/lib/ui/batches/repeat-values';
import { startBags, testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed, twentyBags } from '../../support/shed';

const { superuser } = await testDatabase();
let people: Growers;
let stock: Shed;
let networks = 0;
beforeEach(async () => {
  networks += 1;
  people = await growers(superuser, String(networks));
  stock = await shed(people);
});

const repeat = (which: string, actor: Actor = people.member) =>
  readAs(actor, (context) => getRepeat(context, which, testDay));

async function run(methodId: string, startedAt: string, endedAt: string | null): Promise<string> {
  const raw = { siteId: people.millLane, methodId, startedAt, endedAt };
  const result = await runAs(people.member, startTreatmentInput, startTreatment, raw, { now: testDay });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
  return result.value.id;
}

async function receive(mass: number, siteId = people.millLane): Promise<void> {
  const raw = { spawnLotId: stock.oysterSpawn, siteId, receivedOn: '2026-03-05', mass };
  const result = await runAs(people.coordinator, receiveSpawnInput, receiveSpawn, raw, { now: testDay });
  expect(result.kind).toBe('ok');
}

describe('the batch that a repeat begins from', () => {
  it('is the last one that the person started, or the one named', async () => {
    const first = await startBags(people, stock);
    const later = await startBags(people, stock, { inoculatedOn: '2026-04-20' });
    expect((await repeat('last'))?.batch.id).toBe(later);
    expect((await repeat(first))?.batch.id).toBe(first);
    expect((await repeat('last', people.coordinator))?.batch.id).toBe(later);
  });

  it('is nothing for somebody who cannot see it, or where there is none', async () => {
    const id = await startBags(people, stock);
    expect(await repeat(id, people.neighbour)).toBeUndefined();
    expect(await repeat('last', people.neighbour)).toBeUndefined();
    expect(await repeat(id, people.stranger)).toBeUndefined();
  });
});

describe('the treatment proposed', () => {
  it('is the latest run of the site that has ended and was not spawned, of the same method first', async () => {
    await startBags(people, stock);
    expect((await repeat('last'))?.treatment).toBeNull();
    const bath = await run(stock.hotWater, '2026-05-18T10:00:00Z', '2026-05-18T13:00:00Z');
    await run(stock.lime, '2026-05-19T10:00:00Z', '2026-05-19T20:00:00Z');
    await run(stock.hotWater, '2026-05-20T10:00:00Z', null);
    expect((await repeat('last'))?.treatment).toMatchObject({ runId: bath, spawned: false });
    await startBags(people, stock, {
      inoculatedOn: '2026-05-19',
      components: [{ ...twentyBags(people, stock).components[0], treatment: `run:${bath}` }],
    });
    expect((await repeat('last'))?.treatment).toMatchObject({ methodId: stock.lime, spawned: false });
  });

  it('is the same run while its load is fresh and nothing else waits', async () => {
    const bath = await run(stock.hotWater, '2026-05-19T10:00:00Z', '2026-05-19T13:00:00Z');
    await startBags(people, stock, {
      inoculatedOn: '2026-05-19',
      components: [{ ...twentyBags(people, stock).components[0], treatment: `run:${bath}` }],
    });
    expect((await repeat('last'))?.treatment).toMatchObject({ runId: bath, spawned: true });
    const later = await readAs(people.member, (context) =>
      getRepeat(context, 'last', new Date('2026-05-25T12:00:00Z')),
    );
    expect(later?.treatment).toBeNull();
  });

  it('is none for what was not treated, nor a run that ended weeks ago', async () => {
    await run(stock.hotWater, '2026-04-18T10:00:00Z', '2026-04-18T13:00:00Z');
    await startBags(people, stock);
    expect((await repeat('last'))?.treatment).toBeNull();
    await run(stock.hotWater, '2026-05-19T10:00:00Z', '2026-05-19T13:00:00Z');
    await startBags(people, stock, {
      inoculatedOn: '2026-05-01',
      components: [{ ...twentyBags(people, stock).components[0], treatment: `method:${stock.untreated}` }],
    });
    expect((await repeat('last'))?.treatment).toBeNull();
  });
});

describe('the spawn left at the site', () => {
  it('is what was received there minus what its batches took, and unknown without a receipt', async () => {
    await startBags(people, stock);
    expect((await repeat('last'))?.spawn).toEqual([
      { lotId: stock.oysterSpawn, lotCode: 'SP-1', neededGrams: 1_200, leftGrams: null, enough: null },
    ]);
    await receive(9_000, people.quarry);
    expect((await repeat('last'))?.spawn[0]?.leftGrams).toBeNull();
    await receive(3_000);
    expect((await repeat('last'))?.spawn[0]).toMatchObject({ leftGrams: 1_800, enough: true });
    await startBags(people, stock);
    expect((await repeat('last'))?.spawn[0]).toMatchObject({ leftGrams: 600, enough: false });
  });

  it('counts the batches that took some without a mass', async () => {
    await receive(3_000);
    await startBags(people, stock, { spawn: [{ lotId: stock.oysterSpawn, mass: '' }] });
    const facts = await readAs(people.member, async (context) =>
      listStartFacts(context, await listStartChoices(context)),
    );
    expect(facts.spawnLeft).toEqual([
      { lotId: stock.oysterSpawn, siteId: people.millLane, grams: 3_000, unweighed: 1 },
    ]);
  });
});

describe('the form of a repeat', () => {
  it('saves a batch like the old one, of today, with the moisture assumed instead of copied', async () => {
    await receive(3_000);
    const id = await startBags(people, stock);
    const bath = await run(stock.hotWater, '2026-05-19T10:00:00Z', '2026-05-19T13:00:00Z');
    const view = await repeat(id);
    if (!view) throw new Error('nothing to repeat');
    const values = repeatValues(view, people.member);
    expect(values).toMatchObject({
      unitCount: '20',
      inoculatedOn__quick: '2026-05-20',
      moistureSource: 'assumed',
      moisturePercent: '',
      'components.0.treatment': `run:${bath}`,
      'spawn.0.lotId': stock.oysterSpawn,
    });
    for (const own of ['id', 'revision', 'note', 'inoculatedOn__day']) expect(values).not.toHaveProperty(own);
    const raw = {
      ...twentyBags(people, stock),
      inoculatedOn: '2026-05-20',
      components: [
        { ...twentyBags(people, stock).components[0], treatment: values['components.0.treatment'] },
      ],
      moistureSource: values.moistureSource,
      moisturePercent: values.moisturePercent,
    };
    const saved = await runAs(people.member, startBatchInput, startBatch, raw, { now: testDay });
    expect(saved.kind).toBe('ok');
  });

  it('leaves out a spawn lot of which too little is left', async () => {
    await receive(1_500);
    await startBags(people, stock);
    const view = await repeat('last');
    expect(view && repeatValues(view, people.member)['spawn.0.lotId']).toBe('');
  });
});
