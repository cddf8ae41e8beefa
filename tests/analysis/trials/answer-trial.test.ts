import { describe, expect, it } from 'vitest';
import { answerTrial } from '@/lib/analysis/trials/answer-trial';
import type { TrialData, TrialRun } from '@/lib/analysis/trials/trial-run';
import { trialSize } from '@/lib/analysis/trials/trial-size';
import { seededRandom } from '@/lib/stats/random/seeded-random';
import { type Simulated, simulateTrial } from './simulated-trial';

const asOf = '2026-07-01T00:00:00Z';
const answer = (data: TrialData) => answerTrial(data, asOf);

const run = (siteId: string, armId: string, at: number, found: number, more: Partial<TrialRun> = {}) =>
  ({
    slotId: `${siteId}-${armId}-${at}`,
    siteId,
    armId,
    made: true,
    load: `${siteId}-${armId}-${at}`,
    units: 20,
    outcome: { kind: 'counted', numerator: found, denominator: 20 },
    departures: [],
    ...more,
  }) satisfies TrialRun;

/** Bath loses 10, 20 % at one site and 30, 40 % at the other; lime 20 points more everywhere. */
const exact: TrialData = {
  outcome: 'contamination',
  arms: [
    { id: 'bath', label: 'Bath' },
    { id: 'lime', label: 'Lime' },
  ],
  runs: [
    run('a', 'bath', 1, 2),
    run('a', 'bath', 2, 4),
    run('b', 'bath', 1, 6),
    run('b', 'bath', 2, 8),
    run('a', 'lime', 1, 6),
    run('a', 'lime', 2, 8),
    run('b', 'lime', 1, 10),
    run('b', 'lime', 2, 12),
  ],
};

describe('the planned analysis', () => {
  it('compares arms within sites, by hand: 20 points, standard error sqrt(40 / 4 * 2 / 1) on 5 degrees of freedom', () => {
    const [contrast] = answer(exact).asDrawn.contrasts;
    // Each cell varies by +-5 points: residual squares 8 * 25 = 200 on 8 - 3 = 5 df; se = sqrt(40 * (1/4 + 1/4)).
    const half = 2.570581835636314 * Math.sqrt(40 / 2);
    expect(contrast?.points).toMatchObject({ kind: 'figure', unit: 'points' });
    if (contrast?.points.kind !== 'figure' || contrast.points.interval.kind !== 'interval') return;
    expect(contrast.points.value).toBeCloseTo(20, 10);
    expect(contrast.points.interval.low).toBeCloseTo(20 - half, 8);
    expect(contrast.points.interval.high).toBeCloseTo(20 + half, 8);
    expect(contrast.verdict).toBe('more');
  });

  it('does not depend on the order of the runs', () => {
    const shuffled = { ...exact, runs: seededRandom(7).shuffle(exact.runs) };
    expect(answer(shuffled)).toEqual(answer(exact));
  });

  it('counts a run in its drawn arm whatever was done, and leaves it out of the second comparison', () => {
    const runs = exact.runs.map((one, index) =>
      index === 0 ? { ...one, departures: ['other-treatment' as const] } : one,
    );
    const { asDrawn, asPlanned } = answer({ ...exact, runs });
    expect(asDrawn.arms.map(({ counted }) => counted)).toEqual([4, 4]);
    expect(asPlanned.arms.map(({ counted, planned }) => [counted, planned])).toEqual([
      [3, 4],
      [4, 4],
    ]);
  });

  it('takes batches of one arm that were treated in one load as one value', () => {
    const together = exact.runs.map((one, index) => (index < 2 ? { ...one, load: 'same load' } : one));
    const { asDrawn } = answer({ ...exact, runs: together });
    const figure = asDrawn.arms[0]?.figure;
    expect(figure?.n).toMatchObject({ batches: 4, runs: 3 });
  });

  it('tells what was left out and why', () => {
    const open = { kind: 'left-out', reason: 'window-open' } as const;
    const runs = exact.runs.map((one, index) => (index === 4 ? { ...one, outcome: open } : one));
    expect(answer({ ...exact, runs }).asDrawn.arms[1]?.figure.leftOut).toEqual([
      { reason: 'window-open', batches: 1, units: 20 },
    ]);
  });

  it('says that it cannot compute where an arm has no outcome', () => {
    const runs = exact.runs.filter(({ armId }) => armId === 'bath');
    const [contrast] = answer({ ...exact, runs }).asDrawn.contrasts;
    expect(contrast).toMatchObject({
      verdict: 'cannot-tell',
      pValue: null,
      points: { kind: 'cannot', reason: 'not-enough-data' },
    });
  });

  it('cannot compute where every run of every arm gave the same', () => {
    const runs = exact.runs.map((one) => ({
      ...one,
      outcome: { kind: 'counted' as const, numerator: 0, denominator: 20 },
    }));
    expect(answer({ ...exact, runs }).asDrawn.contrasts[0]?.points.kind).toBe('cannot');
  });
});

function toldApart(trials: number, of: Simulated): number {
  let told = 0;
  for (let seed = 1; seed <= trials; seed += 1)
    if (answer(simulateTrial(seed, of)).asDrawn.contrasts.some(({ verdict }) => verdict !== 'cannot-tell'))
      told += 1;
  return (100 * told) / trials;
}

/** 3.3 standard errors of a percentage about its expectation: one such test in a thousand would fail by chance. */
const reach = (percent: number, trials: number) => 3.3 * Math.sqrt((percent * (100 - percent)) / trials);

describe('over many simulated trials', () => {
  const trials = 400;

  it('arms without a difference are told apart in about 5 of 100', { timeout: 120_000 }, () => {
    const two = { sites: 5, blocks: 2, unitsPerRun: 10, likeness: 0.1, siteSpread: 0.5 };
    const found = toldApart(trials, { ...two, rates: [0.15, 0.15] });
    expect(found).toBeLessThan(5 + reach(5, trials));
    expect(found).toBeGreaterThan(5 - reach(5, trials));
  });

  it('a difference is found as often as the plan promised', { timeout: 120_000 }, () => {
    const size = trialSize({
      outcome: 'contamination',
      arms: 2,
      sites: 6,
      unitsPerRun: 10,
      expectedPercent: 10,
      differencePoints: 20,
      likeness: 0.1,
      runSpreadPoints: null,
      powerPercent: 80,
    });
    const blocks = size.blocksNeeded ?? 0;
    const promised = size.powerOf(blocks);
    expect(promised).toBeGreaterThanOrEqual(80);
    const of = { sites: 6, blocks, unitsPerRun: 10, likeness: 0.1, siteSpread: 0.4, rates: [0.1, 0.3] };
    const found = toldApart(trials, of);
    expect(Math.abs(found - promised)).toBeLessThan(reach(promised, trials) + 2);
  });
});

describe('the size of a trial', () => {
  const asked = {
    outcome: 'contamination' as const,
    arms: 2,
    sites: 5,
    unitsPerRun: 10,
    expectedPercent: 10,
    differencePoints: 20,
    likeness: 0.1,
    runSpreadPoints: null,
    powerPercent: 80,
  };

  it('takes more runs where units of one run are more alike, and not fewer for more bags in a run that all share its fate', () => {
    const needed = (likeness: number, unitsPerRun: number) =>
      trialSize({ ...asked, likeness, unitsPerRun }).blocksNeeded ?? 99;
    expect(needed(0.5, 10)).toBeGreaterThan(needed(0.1, 10));
    expect(needed(1, 40)).toBe(needed(1, 10));
  });

  it('takes more runs for three arms, whose comparisons share the 5 %', () => {
    expect(trialSize({ ...asked, arms: 3 }).powerOf(3)).toBeLessThan(trialSize(asked).powerOf(3));
  });

  it('says so where not even fifty runs of each arm at each site are enough', () => {
    expect(trialSize({ ...asked, differencePoints: 0.5 }).blocksNeeded).toBeNull();
  });
});
