import { describe, expect, it } from 'vitest';
import { findRoot } from '@/lib/stats/find-root';
import { binomialDeviations } from '@/lib/stats/mixed/binomial/binomial-deviations';
import { fitBinomialMixed } from '@/lib/stats/mixed/binomial/fit-binomial';
import { profileBinomialDeviations } from '@/lib/stats/mixed/binomial/profile-binomial';
import { curvatureLimits } from '@/lib/stats/mixed/curvature-limits';
import { fitLinearMixed } from '@/lib/stats/mixed/linear/fit-linear';
import { linearDeviations } from '@/lib/stats/mixed/linear/linear-deviations';
import { profileDeviations } from '@/lib/stats/mixed/linear/profile-deviations';
import type { DeviationInterval } from '@/lib/stats/mixed/variance-interval';
import { seededRandom } from '@/lib/stats/random/seeded-random';

const rise = 3.841458820694124;

/**
 * Profile limits where k levels with noise of variance `noise` have the mean square that `deviation` explains: the likelihood
 * of a scaled chi-square.
 */
function chiSquareLimits(deviation: number, noise: number, levels: number) {
  const square = deviation ** 2 + noise;
  const beyond = (value: number) => {
    const ratio = square / (value ** 2 + noise);
    return levels * (ratio - 1 - Math.log(ratio)) - rise;
  };
  return {
    low: findRoot(beyond, 0.01 * deviation, deviation, 1e-12),
    high: findRoot(beyond, deviation, 3 * deviation, 1e-12),
  };
}

describe('curvatureLimits', () => {
  it.each([
    [0.4, 0, 100],
    [0.4, 0, 1000],
    [0.4, 0.1, 400],
    [0.2, 0.1, 3000],
  ])(
    'are those of the profile of a deviation of %d with noise %d about each of %d levels',
    (estimate, noise, levels) => {
      const standardError = ((estimate ** 2 + noise) * Math.sqrt(2 / levels)) / (2 * estimate);
      const limits = curvatureLimits({ estimate, standardError, levels }, 0.95);
      const exact = chiSquareLimits(estimate, noise, levels);
      const width = exact.high - exact.low;
      expect(Math.abs((limits?.low ?? 0) - exact.low)).toBeLessThan(0.005 * width);
      expect(Math.abs((limits?.high ?? 0) - exact.high)).toBeLessThan(0.005 * width);
    },
  );

  it('begin at 0 where the data do not rule it out', () => {
    const limits = curvatureLimits({ estimate: 0.1, standardError: 0.06, levels: 1000 }, 0.95);
    expect(limits?.low).toBe(0);
    expect(limits?.high).toBeGreaterThan(0.15);
  });

  it('are left to the profile with few levels and at 0', () => {
    expect(curvatureLimits({ estimate: 0.4, standardError: 0.03, levels: 99 }, 0.95)).toBeUndefined();
    expect(curvatureLimits({ estimate: 0, standardError: 0.02, levels: 1000 }, 0.95)).toBeUndefined();
  });
});

/**
 * 400 sites of 26 batches of 20 bags each, with twelve lots that go to any site and no variation of their own, and makers that
 * vary hardly at all.
 */
function network() {
  const random = seededRandom(11);
  const sites = Array.from({ length: 400 }, () => 0.5 * random.normal());
  const makers = Array.from({ length: 200 }, () => 0.03 * random.normal());
  const rows = sites.flatMap((effect, site) =>
    Array.from({ length: 26 }, () => {
      const maker = random.integer(200);
      const own = effect + (makers[maker] ?? 0) + 0.3 * random.normal();
      const rate = 1 / (1 + Math.exp(1.5 - own));
      const events = Array.from({ length: 20 }, () => random.next()).filter((draw) => draw < rate).length;
      return { site: `site ${site}`, lot: `lot ${random.integer(12)}`, maker: `maker ${maker}`, own, events };
    }),
  );
  return {
    rows,
    random: [
      { name: 'site', values: rows.map(({ site }) => site) },
      { name: 'lot', values: rows.map(({ lot }) => lot) },
      { name: 'maker', values: rows.map(({ maker }) => maker) },
    ],
  };
}

function expectAlike(shown: readonly DeviationInterval[], profiles: readonly DeviationInterval[]) {
  expect(shown.map(({ term }) => term)).toEqual(profiles.map(({ term }) => term));
  for (const [place, { interval }] of profiles.entries()) {
    const width = interval.high - interval.low;
    expect(Math.abs((shown[place]?.interval.low ?? 0) - interval.low)).toBeLessThan(0.05 * width);
    expect(Math.abs((shown[place]?.interval.high ?? 0) - interval.high)).toBeLessThan(0.05 * width);
  }
}

describe('intervals of deviations of many rows', () => {
  const { rows, random } = network();

  it('of a linear model are those of the profiles, which are followed only where there are few levels', () => {
    const fit = fitLinearMixed({ response: rows.map(({ own }) => own), fixed: [], random });
    if (fit.kind !== 'estimate') throw new Error(fit.reason);
    const shown = linearDeviations(fit);
    expect(shown.map(({ interval }) => interval.method)).toEqual([
      'likelihood curvature',
      'profile likelihood',
      'likelihood curvature',
      'likelihood curvature',
    ]);
    expectAlike(shown, profileDeviations(fit));
  });

  it('of a binomial model too', () => {
    const events = rows.map((row) => row.events);
    const fit = fitBinomialMixed({ events, trials: events.map(() => 20), fixed: [], random });
    if (fit.kind !== 'estimate') throw new Error(fit.reason);
    const shown = binomialDeviations(fit);
    expect(shown.map(({ interval }) => interval.method)).toEqual([
      'likelihood curvature',
      'profile likelihood',
      'likelihood curvature',
    ]);
    expectAlike(shown, profileBinomialDeviations(fit));
  });
});
