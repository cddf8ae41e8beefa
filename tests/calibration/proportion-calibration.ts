import { binomialDensity } from '@/lib/stats/distribution/binomial';
import type { Interval } from '@/lib/stats/outcome';
import { clopperPearsonInterval } from '@/lib/stats/proportion/clopper-pearson-interval';
import { newcombeDifference } from '@/lib/stats/proportion/newcombe-difference';
import { wilsonInterval } from '@/lib/stats/proportion/wilson-interval';
import { type LevelRow, RATES } from './calibration-row';

type Limits = (events: number, units: number) => Interval | { kind: 'cannot-compute' };

/** Exact coverage, in percent: the probability of every count whose interval holds the truth. */
function coverage(limits: Limits, units: number, rate: number): number {
  let held = 0;
  for (let events = 0; events <= units; events += 1) {
    const interval = limits(events, units);
    if (interval.kind !== 'interval') continue;
    if (interval.low <= rate && rate <= interval.high) held += binomialDensity(events, units, rate);
  }
  return 100 * held;
}

/** Mean over true rates within 10 % of the named one, because coverage jumps from one rate to the next. */
function smoothedCoverage(limits: Limits, units: number, rate: number): number {
  const steps = 21;
  let sum = 0;
  for (let step = 0; step < steps; step += 1) {
    sum += coverage(limits, units, rate * (0.9 + (0.2 * step) / (steps - 1)));
  }
  return sum / steps;
}

/** Intervals for independent units, summed over all counts instead of simulated. */
export function proportionCoverage(): LevelRow[] {
  return [12, 40, 150].flatMap((units) =>
    RATES.flatMap((rate): LevelRow[] => {
      const setting = `${units} units, rate ${100 * rate} %`;
      const wilson = smoothedCoverage((x, n) => wilsonInterval(x, n, 0.95), units, rate);
      const exact = smoothedCoverage((x, n) => clopperPearsonInterval(x, n, 0.95), units, rate);
      return [
        {
          method: 'one proportion, Wilson',
          setting,
          stated: '95 % (93 to 97)',
          found: `${wilson.toFixed(1)} %`,
          holds: wilson >= 93 && wilson <= 97,
        },
        {
          method: 'one proportion, Clopper-Pearson',
          setting,
          stated: 'at least 95 %',
          found: `${exact.toFixed(1)} %`,
          holds: exact >= 95,
        },
      ];
    }),
  );
}

/** Newcombe's difference for every pair of counts of two groups. */
export function differenceCoverage(): LevelRow[] {
  return [
    [15, 15],
    [40, 20],
    [60, 60],
  ].flatMap(([first = 1, second = 1]) =>
    [
      [0.01, 0.05],
      [0.05, 0.2],
      [0.1, 0.1],
      [0.4, 0.2],
    ].map(([rate = 0, other = 0]): LevelRow => {
      let held = 0;
      for (let one = 0; one <= first; one += 1) {
        for (let two = 0; two <= second; two += 1) {
          const answer = newcombeDifference(
            { events: one, trials: first },
            { events: two, trials: second },
            0.95,
          );
          if (answer.kind === 'cannot-compute' || answer.interval.kind !== 'interval') continue;
          if (answer.interval.low <= rate - other && rate - other <= answer.interval.high) {
            held += binomialDensity(one, first, rate) * binomialDensity(two, second, other);
          }
        }
      }
      return {
        method: 'difference of two proportions, Newcombe',
        setting: `${first} and ${second} units, ${100 * rate} % and ${100 * other} %`,
        stated: '95 % (93 to 97)',
        found: `${(100 * held).toFixed(1)} %`,
        holds: held >= 0.93 && held <= 0.97,
      };
    }),
  );
}
