import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { readAs, writeAs } from '@/lib/access/scoped-db';
import { invalid, type Result } from '@/lib/base/result';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { startBatches } from '@/lib/records/batch/start-batches';
import { recordFindingInput } from '@/lib/records/finding/finding.input';
import { recordFindings } from '@/lib/records/finding/record-findings';
import { addSpawnLots } from '@/lib/records/spawn-lot/add-spawn-lots';
import { addSpawnLotInput } from '@/lib/records/spawn-lot/spawn-lot.input';
import { addSubstrateLots } from '@/lib/records/substrate-lot/add-substrate-lots';
import { addSubstrateLotInput } from '@/lib/records/substrate-lot/substrate-lot.input';
import { startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed, twentyBags } from '../../support/shed';

vi.setConfig({ testTimeout: 120_000 });
const { superuser } = await testDatabase();
const now = new Date('2026-05-20T15:00:00Z');
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

type Many<Input> = (
  context: WriteContext,
  asked: readonly OneOfMany<Input>[],
) => Promise<readonly Result<{ readonly id: string }>[]>;

/** What was answered of each, ids and drawn codes left out. */
const told = (answers: readonly Result<{ readonly id: string }>[]) =>
  answers.map((answer) => (answer.kind === 'ok' ? 'made' : answer));

/** Answers of all inputs at once, and of each alone after those before it; both are taken back. */
async function bothWays<Input>(many: Many<Input>, inputs: readonly Input[]) {
  const asked = inputs.map((input, index) => ({
    input,
    confirmed: new Set(
      index % 2 === 0 ? [] : ['already-recorded', 'spawn-rate-unusual', 'mass-per-unit-large'],
    ),
  }));
  const answers: { atOnce?: unknown; oneByOne?: unknown } = {};
  await writeAs(people.member, { now, longestMilliseconds: 60_000 }, async (context) => {
    answers.atOnce = told(await many(context, asked));
    return invalid('', 'taken-back');
  });
  await writeAs(people.member, { now, longestMilliseconds: 60_000 }, async (context) => {
    const each: Result<{ readonly id: string }>[] = [];
    for (const one of asked) each.push(...(await many(context, [one])));
    answers.oneByOne = told(each);
    return invalid('', 'taken-back');
  });
  return answers;
}

function read<S extends Parameters<typeof parseInput>[0]>(schema: S, raw: unknown) {
  const parsed = parseInput(schema, raw, 'en-US');
  if (parsed.kind !== 'ok') throw new Error(JSON.stringify(parsed));
  return parsed.value;
}

describe('many records at once are answered as one after the other', () => {
  it('findings, each by what those before it left of the batch', async () => {
    const [first, second] = [await startBags(people, stock), await startBags(people, stock)];
    const usual = { foundOn: '2026-04-10', sign: 'green', stage: 'colonising', action: 'isolated' };
    const inputs = [
      { batchId: first, units: 2, unitNumbers: '1, 2' },
      { batchId: second, units: 20 },
      { batchId: first, units: 2 },
      { batchId: first, units: 2 },
      { batchId: second, units: 1 },
      { batchId: first, units: 1, unitNumbers: '2', sign: 'black' },
      { batchId: first, units: 15 },
      { batchId: first, units: 14, foundOn: '2026-04-11' },
      { batchId: first, units: 1, foundOn: '2026-03-11' },
      { batchId: '01a216c1-34c4-7199-bd51-ce39e1e87975', units: 1 },
    ].map((changes) => read(recordFindingInput, { ...usual, ...changes }));
    const { atOnce, oneByOne } = await bothWays(recordFindings, inputs);
    expect(atOnce).toEqual(oneByOne);
    expect(atOnce).toMatchObject([
      'made',
      'made',
      { kind: 'confirm', questions: [{ code: 'already-recorded' }] },
      'made',
      { kind: 'invalid', errors: [{ code: 'too-many-units', values: { available: 0 } }] },
      { kind: 'invalid', errors: [{ code: 'unit-named-before' }] },
      'made',
      { kind: 'invalid', errors: [{ code: 'too-many-units', values: { available: 1 } }] },
      { kind: 'invalid', errors: [{ code: 'before-inoculation' }] },
      { kind: 'not-found' },
    ]);
  });

  it('batches, of which two cannot have one code', async () => {
    const bags = twentyBags(people, stock);
    const inputs = [
      { code: 'ONE-1' },
      { code: 'one-1' },
      {},
      { siteId: people.quarry },
      { unitCount: '1' },
      { unitCount: '1' },
      { inoculatedOn: '2026-06-01' },
      { containerKind: 'bed', unitCount: '2' },
    ].map((changes) => read(startBatchInput, { ...bags, ...changes }));
    const { atOnce, oneByOne } = await bothWays(startBatches, inputs);
    expect(atOnce).toEqual(oneByOne);
    expect(atOnce).toMatchObject([
      'made',
      { kind: 'invalid', errors: [{ code: 'code-taken', values: { code: 'ONE-1' } }] },
      'made',
      { kind: 'not-found' },
      { kind: 'confirm' },
      'made',
      { kind: 'invalid', errors: [{ code: 'future-date' }] },
      { kind: 'invalid', errors: [{ code: 'bed-is-one' }] },
    ]);
  });

  it('lots of material and of spawn, with codes of their own or drawn', async () => {
    const { id: materialId } = await readAs(people.member, ({ db }) =>
      db.material.findFirstOrThrow({ where: { code: 'wheat_straw' } }),
    );
    const straw = { receivedOn: '2026-05-03', moistureSource: 'none', materialId };
    const lots = [
      { code: 'STRAW-1' },
      { code: 'STRAW-5' },
      { code: 'STRAW-5' },
      {},
      { receivedOn: '2027-01-01' },
      { materialId: people.quarry },
      { moistureSource: 'measured' },
    ].map((changes) => read(addSubstrateLotInput, { ...straw, ...changes }));
    const materials = await bothWays<(typeof lots)[number]>(
      (context, asked) =>
        addSubstrateLots(
          context,
          asked.map(({ input }) => input),
        ),
      lots,
    );
    expect(materials.atOnce).toEqual(materials.oneByOne);
    expect(materials.atOnce).toMatchObject([
      { errors: [{ code: 'code-taken' }] },
      'made',
      { errors: [{ code: 'code-taken' }] },
      'made',
      { errors: [{ code: 'future-date' }] },
      { kind: 'not-found' },
      { errors: [{ code: 'missing' }] },
    ]);
    const grain = { speciesId: stock.oyster, form: 'grain', madeOn: '2026-05-03' };
    const spawn = [
      { code: 'SP-1' },
      { code: 'SP-5' },
      { code: 'SP-5' },
      {},
      { receivedOn: '2026-05-01' },
    ].map((changes) => read(addSpawnLotInput, { ...grain, ...changes }));
    const spawned = await bothWays<(typeof spawn)[number]>(
      (context, asked) =>
        addSpawnLots(
          context,
          asked.map(({ input }) => input),
        ),
      spawn,
    );
    expect(spawned.atOnce).toEqual(spawned.oneByOne);
    expect(spawned.atOnce).toMatchObject([
      { errors: [{ code: 'code-taken' }] },
      'made',
      { errors: [{ code: 'code-taken' }] },
      'made',
      { errors: [{ code: 'before' }] },
    ]);
  });
});
