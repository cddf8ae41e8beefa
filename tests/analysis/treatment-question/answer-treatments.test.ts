import { describe, expect, it } from 'vitest';
import { modelBatches } from '@/lib/analysis/adjusted/model-batch';
import { answerTreatments } from '@/lib/analysis/treatment-question/answer-treatments';
import { treatedBatches } from '@/lib/analysis/treatment-question/batch-standing';
import type { JudgedRun } from '@/lib/analysis/treatment-question/judged-run';
import { driftOf } from '@/lib/analysis/treatment-question/site-runs';
import { lossesBySeason, lossesByStart } from '@/lib/analysis/treatment-question/treated-losses';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { truths } from '@/seed/story/truths';
import { fitHere, storyData, storyToday } from '../adjusted/story-data';
import type { StoryBatch } from '../adjusted/story-facts';
import { bags, judgedOn } from '../bags-of';
import { storyRuns } from './story-runs';

const ground = { pooled: { species: true, materials: true }, asOf: `${storyToday}T12:00:00.000Z` };
const runs = storyRuns(storyToday);

function ask(arrange?: (batches: StoryBatch[]) => StoryBatch[], some: readonly JudgedRun[] = runs) {
  const { judged, batches } = storyData(arrange);
  return answerTreatments(
    { judged, batches, runs: some, from: '2020-01-01', courses: [], windows: [], ground },
    fitHere,
  );
}

const answer = await ask();
const loss = (standing: string) => {
  const found = answer.standings.find((one) => one.standing === standing)?.loss;
  if (found?.kind !== 'figure' || found.interval.kind !== 'interval') throw new Error(`no ${standing}`);
  return { value: found.value, low: found.interval.low, high: found.interval.high };
};

describe('does the treatment do what it says', () => {
  it('sees the short bath of the demo: every run of that site and no other falls short', () => {
    const short = answer.sites.filter(({ outside }) => outside > 0);
    expect(short.map(({ siteId, methodId }) => [siteId, methodId])).toEqual([
      [truths.shortBath.site, 'hot_water_bath'],
    ]);
    expect(short[0]?.outside).toBe(short[0]?.runs);
    expect(answer.outsideRuns).toBe(short[0]?.outside);
  });

  it('shows that batches of short runs lose more, each run being one group', () => {
    expect(loss('outside').low).toBeGreaterThan(loss('well').high);
    const well = answer.standings.find(({ standing }) => standing === 'well');
    expect(well?.loss.n.runs).toBeGreaterThan(200);
    expect(well?.loss.n.runs).toBeLessThanOrEqual(well?.runs ?? 0);
    expect(well?.loss.method.clusteredBy).toBe('treatment-run');
  });

  it('says that the site may be the reason, where no site has both kinds, by limits wide enough for that', () => {
    const { difference, sitesWithBoth } = answer;
    expect(sitesWithBoth).toBe(0);
    if (difference?.kind !== 'figure' || difference.interval.kind !== 'interval') throw new Error('none');
    const rate = (logit: number) => 100 / (1 + Math.exp(-(truths.baseLogit + logit)));
    const truth = rate(truths.shortBath.logit) - rate(0);
    expect(difference.interval.low).toBeLessThan(truth);
    expect(difference.interval.high).toBeGreaterThan(truth);
    const raw = loss('outside').high - loss('outside').low;
    expect(difference.interval.high - difference.interval.low).toBeGreaterThan(raw);
  });

  it('does not call a site to account whose runs cannot be judged', () => {
    expect(answer.judgedRuns + answer.unknownRuns + answer.otherRuns).toBe(runs.length);
    for (const { runs: all, outside, unknown } of answer.sites)
      expect(outside + unknown).toBeLessThanOrEqual(all);
  });

  it('counts above the table the runs of the table, and no others', async () => {
    const some = await ask((batches) =>
      batches.filter(({ facts }) => facts.siteId !== truths.shortBath.site),
    );
    expect(some.outsideRuns).toBe(0);
    expect(some.otherRuns).toBeGreaterThan(answer.otherRuns);
    for (const one of [answer, some]) {
      const inTable = one.standings.reduce((sum, row) => sum + row.runs, 0);
      expect(one.judgedRuns + one.unknownRuns).toBe(inTable);
      expect(one.sites.reduce((sum, site) => sum + site.runs, 0)).toBe(inTable);
      const outside = one.standings.find(({ standing }) => standing === 'outside')?.runs ?? 0;
      expect(one.outsideRuns).toBe(outside);
    }
  });

  it('gives the same answer in whatever order batches and runs come', async () => {
    const random = seededRandom(5);
    const shuffled = await ask((batches) => random.shuffle([...batches]), random.shuffle([...runs]));
    expect(shuffled).toEqual(answer);
  });

  it('has nothing to say without runs, and says how many batches have none', async () => {
    const none = await ask(undefined, []);
    expect(none).toMatchObject({ judgedRuns: 0, standings: [], difference: null, sites: [] });
    expect(none.batchesWithoutRun).toBeGreaterThan(500);
  });
});

const run = (id: string, changes: Partial<JudgedRun> = {}): JudgedRun => ({
  id,
  code: id,
  siteId: 'mill-lane',
  methodId: 'hot-water',
  startedOn: '2026-03-01',
  standing: 'well',
  heldShare: 1.5,
  startCelsius: 12,
  ...changes,
});

describe('a run that lasted longer than its window allows', () => {
  const batches = judgedOn(['a', 'b', 'c'].map((id) => bags({ id, runIds: [id] })));
  const some = [run('a'), run('b', { standing: 'long' }), run('c', { standing: 'outside' }), run('bucket')];
  const asked = { judged: batches, batches: modelBatches(batches, new Map(), new Map()), ground };

  it('held, and is told apart by site; a run that treated none of the batches asked about is not counted', async () => {
    const told = await answerTreatments(
      { ...asked, runs: some, from: '2020-01-01', courses: [], windows: [] },
      fitHere,
    );
    expect(told).toMatchObject({ judgedRuns: 3, outsideRuns: 1, longRuns: 1, unknownRuns: 0, otherRuns: 1 });
    expect(told.sites).toMatchObject([{ runs: 3, outside: 1, long: 1 }]);
  });

  it('is in neither column of the seasons', () => {
    const halves = new Map([['mill-lane', 'north']] as const);
    const rows = lossesBySeason(
      treatedBatches(batches, some),
      modelBatches(batches, new Map(), halves),
      ground,
    );
    expect(rows.map(({ inside, outside }) => [inside.n.batches, outside.n.batches])).toEqual([[1, 1]]);
  });
});

describe('a batch of several runs', () => {
  it('does not count as one inside the window when one of its runs lasted too long', () => {
    const batches = judgedOn([bags({ runIds: ['good', 'long'] })]);
    const [treated] = treatedBatches(batches, [
      run('good'),
      run('long', { standing: 'long', heldShare: 2.5 }),
    ]);
    expect(treated?.run.id).toBe('long');
  });

  it('goes by the run that fell short', () => {
    const [batch] = judgedOn([bags({ runIds: ['good', 'short'] })]);
    if (!batch) throw new Error('no batch');
    const [treated] = treatedBatches(
      [batch],
      [run('good'), run('short', { standing: 'outside', heldShare: 0.7 })],
    );
    expect(treated?.run.id).toBe('short');
  });

  it('is no batch of a treatment when it is a second life or voided', () => {
    const facts = { runIds: ['good'] };
    const batches = judgedOn([bags({ ...facts, secondLife: true }), bags({ ...facts, voided: true })]);
    expect(treatedBatches(batches, [run('good')])).toEqual([]);
  });
});

describe('losses by season', () => {
  it('puts July in the south to January in the north, and says which months those were', () => {
    const judged = judgedOn([
      bags({ id: 'north', siteId: 'here', inoculatedOn: '2026-01-10', runIds: ['a'] }),
      bags({ id: 'south', siteId: 'there', inoculatedOn: '2025-07-10', runIds: ['b'] }),
    ]);
    const halves = new Map([
      ['here', 'north'],
      ['there', 'south'],
    ] as const);
    const treated = treatedBatches(judged, [run('a', { siteId: 'here' }), run('b', { siteId: 'there' })]);
    const rows = lossesBySeason(treated, modelBatches(judged, new Map(), halves), ground);
    expect(rows.map(({ season, quarters }) => [season, quarters])).toEqual([['1', ['1', '3']]]);
    expect(rows[0]?.inside.n.batches).toBe(2);
  });
});

describe('losses by the temperature at the start', () => {
  it('puts a run at the lower end of its band, and one without a reading apart', () => {
    const batches = judgedOn(['a', 'b', 'c'].map((id) => bags({ id, runIds: [id] })));
    const treated = treatedBatches(batches, [
      run('a', { startCelsius: 9.9 }),
      run('b', { startCelsius: 10 }),
      run('c', { startCelsius: null }),
    ]);
    const rows = lossesByStart(treated, ground).map(({ fromCelsius, belowCelsius }) => [
      fromCelsius,
      belowCelsius,
    ]);
    expect(rows).toEqual([
      [null, 10],
      [10, 15],
      [null, null],
    ]);
  });
});

describe('the course of a site', () => {
  const steady = (random: ReturnType<typeof seededRandom>, count: number, shift = 0) =>
    Array.from({ length: count }, (_, at) =>
      run(`run ${String(at).padStart(3, '0')}`, {
        heldShare: 1.5 + 0.15 * random.normal() + (at >= count - 6 ? shift : 0),
      }),
    );
  const signals = (some: readonly JudgedRun[]) => driftOf(some)?.at(-1)?.signal === 'shorter';

  it('signals runs that become shorter, and seldom anything where nothing changes', () => {
    const random = seededRandom(11);
    const tries = 400;
    const found = (shift: number) =>
      Array.from({ length: tries }, () => signals(steady(random, 30, shift))).filter(Boolean).length / tries;
    // Two standard deviations less over the last six runs.
    expect(found(-0.3)).toBeGreaterThan(0.65);
    expect(found(0)).toBeLessThan(0.02);
  });

  it('is unknown from a handful of runs, or where all are alike', () => {
    expect(driftOf(steady(seededRandom(1), 7))).toBeNull();
    expect(driftOf(Array.from({ length: 20 }, (_, at) => run(`${at}`)))).toBeNull();
  });
});
