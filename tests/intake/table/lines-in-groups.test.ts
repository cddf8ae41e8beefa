import fc from 'fast-check';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { WriteContext } from '@/lib/access/context';
import { runAs } from '@/lib/access/run-command';
import { writeAs } from '@/lib/access/scoped-db';
import { invalid } from '@/lib/base/result';
import { takeNotebook } from '@/lib/intake/table/kinds/take-notebook';
import type { RowToTake, TakenRow, Taker, TakeSettings } from '@/lib/intake/table/taker';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { find, startBags } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
import { takeNotebookByForms } from './one-by-one/take-notebook';

/** `IMPORT_GROUP_RUNS=200 npx vitest run tests/intake/table/lines-in-groups.test.ts` takes longer and tries more. */
const runs = Number(process.env.IMPORT_GROUP_RUNS ?? 25);
vi.setConfig({ testTimeout: Math.max(300_000, runs * 20_000) });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
  const batchId = await startBags(people, stock, { code: 'OLD-1' });
  await find(people.member, batchId, { foundOn: '2026-05-01', units: 1, sign: 'other' });
  const raw = { weighedOn: '2026-05-12', fresh: 410, lines: [{ batchId }] };
  const weighed = await runAs(people.member, recordWeighingInput, recordWeighing, raw, { now });
  if (weighed.kind !== 'ok') throw new Error(JSON.stringify(weighed));
  await startBags({ ...people, member: people.coordinator }, stock, { code: 'FAR-1', siteId: people.quarry });
});

/** Mostly the first, so that most lines come to something. */
const usually = <T>(usual: T, ...rare: T[]) =>
  fc.oneof(
    { weight: 8, arbitrary: fc.constant(usual) },
    { weight: 2, arbitrary: fc.constantFrom(usual, ...rare) },
  );

const questions = [
  'intake-units-of-lines',
  'intake-one-unit',
  'already-recorded',
  'intake-harvest-twice',
  'intake-found-when-weighed',
  'intake-no-sign',
  'intake-stage-colonising',
  'intake-stage-cropping',
  'intake-left-in-place',
  'mass-per-unit-large',
  'spawn-rate-unusual',
];
const line = fc.record({
  // Of two sites: the member cannot see who has FAR-1.
  code: fc.constantFrom('OLD-1', 'old 1', 'NEW-1', 'new 1', 'NEW-2', 'NEW-3', 'KTR-7', 'FAR-1'),
  species: usually('oyster', 'shiitake'),
  inoculatedOn: usually('2026-04-01', '2026-04-02'),
  unitCount: usually<string | undefined>('4', undefined, '1', '0'),
  lot: usually('straw', 'nowhere'),
  weighedOn: fc.oneof(
    usually<string | undefined>('2026-05-12', undefined, '2026-03-01'),
    fc.constant('2026-05-19'),
  ),
  fresh: usually<string | undefined>('410', undefined, '700', '5000', '90000', 'some'),
  contaminated: usually<string | undefined>('1', undefined, '0', '2', '30'),
  foundOn: usually<string | undefined>('2026-05-01', undefined, '2026-05-02'),
  sign: usually<string | undefined>('other', undefined, 'green'),
  stage: usually<string | undefined>(undefined, 'cropping'),
  action: usually<string | undefined>(undefined, 'isolated'),
  unitNumbers: usually<string | undefined>(undefined, '1', '2', '9'),
  fresh2: usually<string | undefined>(undefined, '280', '410'),
  weighedOn2: usually<string | undefined>(undefined, '2026-05-19', '2026-05-12'),
  note: fc.constantFrom(undefined, 'wet'),
  confirmed: fc.oneof({ weight: 3, arbitrary: fc.constant(questions) }, fc.subarray(questions)),
});
type Line = typeof line extends fc.Arbitrary<infer T> ? T : never;

function rowOf(
  { species, lot, unitCount, fresh, fresh2, contaminated, confirmed, ...said }: Line,
  at: number,
): RowToTake {
  const typed = (text: string | undefined, unit: string | null) =>
    text === undefined ? undefined : { text, unit };
  const values = Object.entries({
    ...said,
    species: species === 'oyster' ? stock.oyster : stock.shiitake,
    containerKind: 'bag',
    unitCount: typed(unitCount, null),
    substrateLot: lot === 'straw' ? stock.straw : people.quarry,
    treatment: `method:${stock.steam}`,
    massBefore: typed('2', 'kg'),
    spawnLot: stock.oysterSpawn,
    spawnMass: typed('0.2', 'kg'),
    fresh: typed(fresh, 'g'),
    fresh2: typed(fresh2, 'g'),
    contaminated: typed(contaminated, null),
  });
  return {
    line: at + 2,
    values: new Map(values.filter(([, value]) => value !== undefined)),
    errors: [],
    confirmed: new Set(confirmed),
  };
}

function settingsFor(rows: readonly RowToTake[]): TakeSettings {
  const counts = new Map<string, number>();
  for (const { values } of rows) {
    const code = String(values.get('code'));
    counts.set(code, (counts.get(code) ?? 0) + 1);
  }
  const rowsByText = async () => counts;
  return {
    ...{ siteId: people.millLane, region: 'en-US', rehearsal: false, usedUp: new Set<string>(), rowsByText },
    textsOf: async () => [],
    unitOf: () => null,
  };
}

/** Everything that stands in the network's batches, ids and drawn codes left out. */
async function standing({ db }: WriteContext) {
  const batches = await db.batch.findMany({
    orderBy: { code: 'asc' },
    include: {
      components: true,
      spawnShares: true,
      weighingLines: { include: { weighing: { include: { destinations: true } } } },
      findings: true,
    },
  });
  return batches.map((batch) => ({
    ...{
      code: batch.code,
      units: batch.unitCount,
      on: batch.inoculatedOn,
      dry: batch.dryGrams,
      note: batch.note,
    },
    parts: [batch.components.length, batch.spawnShares.length],
    harvests: batch.weighingLines
      .map(({ freshGrams, flush, weighing }) =>
        [weighing.weighedOn, flush, freshGrams, weighing.note].join(' '),
      )
      .sort(),
    findings: batch.findings
      .map(({ foundOn, units, sign, stage, action, note }) =>
        [foundOn, units, sign, stage, action, note].join(' '),
      )
      .sort(),
  }));
}

/** What a taker makes of lines, so many at once; all of it is taken back. */
async function outcome(taker: Taker, rows: readonly RowToTake[], atOnce: number) {
  const seen: { answers: TakenRow[]; standing?: unknown } = { answers: [] };
  await writeAs(people.member, { now, longestMilliseconds: 120_000 }, async (context) => {
    for (let from = 0; from < rows.length; from += atOnce)
      seen.answers.push(...(await taker.take(context, rows.slice(from, from + atOnce))));
    seen.standing = await standing(context);
    return invalid('', 'taken-back');
  });
  const answers = seen.answers.map((answer, at) => {
    if (answer.kind !== 'needs') return { kind: answer.kind, records: answer.recordIds.length };
    // That others have the code shows when it is written, which a group does after everything else was judged.
    return rows[at]?.values.get('code') === 'FAR-1' ? { kind: answer.kind } : answer;
  });
  return { answers, standing: seen.standing };
}

describe('lines of a notebook that are taken in groups', () => {
  it('come to what they come to one by one through the forms, whatever stands in them', async () => {
    const kinds = { new: 0, there: 0, needs: 0 };
    await fc.assert(
      fc.asyncProperty(
        fc.array(line, { minLength: 10, maxLength: 24 }),
        fc.constantFrom(5, 500),
        async (lines, atOnce) => {
          const rows = lines.map(rowOf);
          const alone = await outcome(takeNotebookByForms(settingsFor(rows)), rows, 1);
          const together = await outcome(takeNotebook(settingsFor(rows)), rows, atOnce);
          expect(together).toEqual(alone);
          for (const { kind } of alone.answers) kinds[kind] += 1;
        },
      ),
      { numRuns: runs, seed: 20261126 },
    );
    // A test of refusals alone would prove little. Of 25 runs 186 lines were new, 8 there already and 220 refused or asked about.
    expect(kinds.new).toBeGreaterThan(runs * 4);
    expect(kinds.there).toBeGreaterThan(runs / 10);
    expect(kinds.needs).toBeGreaterThan(runs * 4);
  });
});
