import { expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { readProduction } from '@/lib/analysis/production/read-production';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { testDatabase } from '../support/database';
import { growers } from '../support/growers';
import { shed, twentyBags } from '../support/shed';

const { superuser } = await testDatabase();
const people = await growers(superuser);
const stock = await shed(people);
const now = new Date('2026-07-20T15:00:00Z');
const confirmed = new Set<string>(['already-recorded', 'same-day', 'large']);

async function start(changes: object) {
  const raw = { ...twentyBags(people, stock), ...changes };
  const result = await runAs(people.coordinator, startBatchInput, startBatch, raw, { now, confirmed });
  if (result.kind !== 'ok') throw new Error(JSON.stringify(result));
}

const logs = {
  ...{ speciesId: stock.shiitake, containerKind: 'log', unitCount: 10, filledMass: null, logWoodCode: 802 },
  components: [
    {
      ...{ lotId: stock.logs, treatment: `method:${stock.untreated}`, role: 'substrate' },
      ...{ mass: null, massStage: 'filled' },
    },
  ],
  ...{ spawn: [{ lotId: stock.shiitakeSpawn, mass: null }], moistureSource: 'none', moisturePercent: null },
};

it('Of batches without a dry mass those count as missing that would be residues: straw does, logs do not', async () => {
  await start({});
  await start({
    filledMass: null,
    moistureSource: 'none',
    moisturePercent: null,
    components: [
      {
        lotId: stock.straw,
        treatment: `run:${stock.bathRun}`,
        role: 'substrate',
        mass: null,
        massStage: 'filled',
      },
    ],
  });
  await start({ ...logs, logDiameter: { text: '5', unit: 'in' }, logLength: { text: '40', unit: 'in' } });
  await start(logs);
  const spring = { from: '2026-04-01', to: '2026-04-20' };
  const production = await readAs(people.coordinator, (context) => readProduction(context, spring));
  expect(production.residues.map(({ material }) => material).sort()).toEqual(['log_wood', 'straw']);
  expect(production.batchesWithoutDryMass).toBe(1);
  expect(production.started.map(({ grams }) => grams)).toEqual([4]);
});
