import fc from 'fast-check';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { attempt } from '@/lib/access/attempt';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { writeAs } from '@/lib/access/scoped-db';
import { invalid, type Result } from '@/lib/base/result';
import { bringTreatmentInput, bringTreatments } from '@/lib/intake/table/kinds/bring-treatment';
import { addSite } from '@/lib/records/site/add-site.command';
import { addSites } from '@/lib/records/site/add-sites';
import { addSiteInput } from '@/lib/records/site/site.input';
import { testDatabase } from '../../support/database';
import { type Growers, growers } from '../../support/growers';
import { type Shed, shed } from '../../support/shed';
import { bringTreatmentByForms } from './one-by-one/bring-treatment';

const runs = Number(process.env.IMPORT_GROUP_RUNS ?? 25);
vi.setConfig({ testTimeout: Math.max(300_000, runs * 20_000) });
const { superuser } = await testDatabase();
const now = new Date('2026-07-20T15:00:00Z');
let people: Growers;
let stock: Shed;

beforeAll(async () => {
  people = await growers(superuser);
  stock = await shed(people);
});

type Answers = readonly Result<{ readonly id: string }>[];
const told = (answers: Answers) => answers.map((answer) => (answer.kind === 'ok' ? 'made' : answer));

function read<S extends Parameters<typeof parseInput>[0]>(schema: S, raw: unknown) {
  const parsed = parseInput(schema, raw, 'en-US');
  if (parsed.kind !== 'ok') throw new Error(JSON.stringify(parsed));
  return parsed.value;
}

/** What is answered and what stands then; taken back. */
async function outcome<T>(
  work: (context: WriteContext) => Promise<Answers>,
  standing: (context: WriteContext) => Promise<T>,
) {
  const seen: { answers?: unknown; standing?: T } = {};
  await writeAs(people.coordinator, { now, longestMilliseconds: 60_000 }, async (context) => {
    seen.answers = told(await work(context));
    seen.standing = await standing(context);
    return invalid('', 'taken-back');
  });
  return seen;
}

/** Mostly the first, so that most rows come to something. */
const usually = <T>(usual: T, ...rare: T[]) =>
  fc.oneof({ weight: 6, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: fc.constantFrom(...rare) });

const questions = ['intake-no-time', 'intake-no-end', 'ph-above-saturation'];
const run = fc.record({
  code: fc.constantFrom('BATH-1', 'T-1', 'T-2', 'T-3', null),
  site: usually<'millLane' | 'quarry' | 'nowhere'>('millLane', 'quarry', 'nowhere'),
  method: usually<'lime' | 'steam' | 'untreated'>('lime', 'steam', 'untreated'),
  startedAt: usually('2026-05-01 18:00', '2026-05-02 06:00', '2026-07-20 09:00', '2026-09-01 08:00'),
  endedAt: usually('2026-05-02 10:00', '', '2026-04-01 08:00'),
  minutes: usually('', '960', '30'),
  lime: usually('500', ''),
  celsius: usually('15', '', '70'),
  ph: usually('12.4', '', '13.9'),
  endCelsius: usually('22', ''),
  endPh: usually('12.1', '', '14'),
  timeAssumed: fc.boolean(),
  confirmed: fc.oneof({ weight: 3, arbitrary: fc.constant(questions) }, fc.subarray(questions)),
});
type Run = typeof run extends fc.Arbitrary<infer T> ? T : never;

function inputOf({
  site,
  method,
  startedAt,
  endedAt,
  confirmed,
  ...said
}: Run): OneOfMany<ReturnType<typeof bringTreatmentInput.parse>> {
  const [date = '', time = ''] = startedAt.split(' ');
  const [endDate, endTime] = endedAt.split(' ');
  const quantity = (text: string, unit: string | null) => (text === '' ? undefined : { text, unit });
  const input = read(bringTreatmentInput, {
    code: said.code,
    siteId: { millLane: people.millLane, quarry: people.quarry, nowhere: stock.oyster }[site],
    methodId: { lime: stock.lime, steam: stock.steam, untreated: stock.untreated }[method],
    startedAt: { quick: date, time },
    endedAt: endTime === undefined ? undefined : { quick: endDate, time: endTime },
    minutes: quantity(said.minutes, 'min'),
    lime: quantity(said.lime, 'g'),
    celsius: quantity(said.celsius, 'celsius'),
    ph: quantity(said.ph, null),
    endCelsius: quantity(said.endCelsius, 'celsius'),
    endPh: quantity(said.endPh, null),
    timeAssumed: said.timeAssumed,
  });
  return { input, confirmed: new Set(confirmed) };
}

describe('treatments of a table that are taken many at once', () => {
  it('come to what they come to one by one through the forms', async () => {
    const standing = async ({ db }: WriteContext) =>
      (await db.treatmentRun.findMany({ include: { readings: { orderBy: { readAt: 'asc' } } } }))
        .map(({ code, startedAt, endedAt, limeGrams, siteId, readings }) =>
          JSON.stringify([
            ...[
              code.startsWith('T-') && code.length > 3 ? 'drawn' : code,
              startedAt,
              endedAt,
              limeGrams,
              siteId,
            ],
            readings.map(({ readAt, place, celsius, ph }) => [readAt, place, celsius, ph]),
          ]),
        )
        .sort();
    let made = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(run, { minLength: 10, maxLength: 20 }), async (drawn) => {
        const asked = drawn.map(inputOf);
        const together = await outcome((context) => bringTreatments(context, asked), standing);
        const alone = await outcome(async (context) => {
          const answers: Result<{ readonly id: string }>[] = [];
          for (const { input, confirmed } of asked)
            answers.push(
              await attempt(context, () => bringTreatmentByForms({ ...context, confirmed }, input)),
            );
          return answers;
        }, standing);
        expect(together).toEqual(alone);
        made += (alone.standing?.length ?? 0) - 1;
      }),
      { numRuns: runs, seed: 20261126 },
    );
    // A test of refusals alone would prove little. Of 25 draws 86 runs were made.
    expect(made).toBeGreaterThan(runs * 2);
  });
});

describe('sites that are added many at once', () => {
  it('are added or refused as by the form, one after the other', async () => {
    const inputs = [
      { code: 'ELM' },
      { code: 'MILL' },
      { code: 'ELM' },
      { code: 'OAK', openedOn: '2026-01-01', closedOn: '2025-01-01' },
      { code: 'ASH', openedOn: '2025-01-01' },
    ].map((changes) =>
      read(addSiteInput, {
        ...{ name: 'A garden', kind: 'farm', timeZone: 'America/New_York', trimDefault: 'as_picked' },
        ...changes,
      }),
    );
    const standing = async ({ db }: WriteContext) =>
      (await db.site.findMany({ orderBy: { code: 'asc' } })).map(({ code, openedOn }) => [code, openedOn]);
    const together = await outcome((context) => addSites(context, inputs), standing);
    const alone = await outcome(async (context) => {
      const answers: Result<{ readonly id: string }>[] = [];
      for (const input of inputs) answers.push(await addSite(context, input));
      return answers;
    }, standing);
    expect(together).toEqual(alone);
    expect(together.answers).toMatchObject([
      'made',
      { errors: [{ code: 'code-taken' }] },
      { errors: [{ code: 'code-taken' }] },
      { errors: [{ code: 'before' }] },
      'made',
    ]);
  });
});
