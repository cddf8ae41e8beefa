import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cumulativeIncidence } from '@/lib/stats/survival/cumulative-incidence';
import type { FollowUp } from '@/lib/stats/survival/follow-up';
import { incidenceAt } from '@/lib/stats/survival/incidence-at';
import { kaplanMeier } from '@/lib/stats/survival/kaplan-meier';
import { restrictedMean } from '@/lib/stats/survival/restricted-mean';
import { timeQuantile } from '@/lib/stats/survival/time-quantile';

const followUps = fc.array(
  fc.record({
    time: fc.integer({ min: 0, max: 30 }),
    cause: fc.constantFrom(null, 'contaminated', 'discarded'),
    count: fc.integer({ min: 1, max: 5 }),
    cluster: fc.constantFrom('run 1', 'run 2', 'run 3', 'run 4'),
  }),
  { minLength: 2, maxLength: 25 },
);
const incidence = (rows: readonly FollowUp[], variance: 'independent' | 'clustered' = 'independent') => {
  const answer = cumulativeIncidence(rows, { level: 0.95, variance, causes: ['contaminated', 'discarded'] });
  if (answer.kind === 'cannot-compute') throw new Error(answer.explanation);
  return answer;
};
const curve = (rows: readonly FollowUp[], variance: 'independent' | 'clustered' = 'independent') => {
  const answer = kaplanMeier(rows, { level: 0.95, transform: 'log-log', variance });
  if (answer.kind === 'cannot-compute') throw new Error(answer.explanation);
  return answer;
};
function rounded(value: unknown): unknown {
  const text = JSON.stringify(value, (_, leaf: unknown) =>
    typeof leaf === 'number' ? Number(leaf.toPrecision(8)).toFixed(9) : leaf,
  );
  return JSON.parse(text);
}

describe('time to finding', () => {
  it('does not depend on the order of records, on their splitting into units, or on the names of runs', () => {
    fc.assert(
      fc.property(followUps, (rows) => {
        const split = rows
          .flatMap(({ count, ...row }) => Array.from({ length: count }, () => ({ ...row, count: 1 })))
          .reverse()
          .map((row) => ({ ...row, cluster: `renamed ${row.cluster}` }));
        expect(rounded(incidence(split))).toEqual(rounded(incidence(rows)));
        const clustered = (data: readonly FollowUp[]) =>
          cumulativeIncidence(data, { level: 0.95, variance: 'clustered' });
        expect(rounded(clustered(split))).toEqual(rounded(clustered(rows)));
        expect(rounded(curve(split))).toEqual(rounded(curve(rows)));
      }),
    );
  });

  it('scales with the unit of time', () => {
    fc.assert(
      fc.property(followUps, (rows) => {
        const inHours = rows.map((row) => ({ ...row, time: row.time * 24 }));
        const [days, hours] = [restrictedMean(curve(rows)), restrictedMean(curve(inHours))];
        if (days.kind === 'cannot-compute' || hours.kind === 'cannot-compute') throw new Error('no mean');
        expect(hours.estimate).toBeCloseTo(24 * days.estimate, 8);
        expect(hours.standardError).toBeCloseTo(24 * days.standardError, 8);
        expect(curve(inHours).steps.map((step) => step.survival)).toEqual(
          curve(rows).steps.map((step) => step.survival),
        );
      }),
    );
  });

  it('shares units out among the causes and the ones without an event, at every time', () => {
    fc.assert(
      fc.property(followUps, (rows) => {
        const answer = incidence(rows);
        answer.overallSurvival.forEach((survival, step) => {
          const ended = answer.causes.reduce((sum, cause) => sum + Number(cause.steps[step]?.incidence), 0);
          expect(survival + ended).toBeCloseTo(1, 12);
        });
      }),
    );
  });

  it('gives one cause the same curve, error and limits as Kaplan-Meier', () => {
    fc.assert(
      fc.property(followUps, (rows) => {
        const single = rows.map((row) => ({ ...row, cause: row.cause === null ? null : 'contaminated' }));
        const steps = incidence(single).causes[0]?.steps ?? [];
        curve(single).steps.forEach((step, index) => {
          const other = steps[index];
          expect(other?.incidence).toBeCloseTo(1 - step.survival, 12);
          if (step.survival === 0 || step.survival === 1) return;
          expect(other?.standardError).toBeCloseTo(Number(step.standardError), 10);
          if (step.interval.kind !== 'interval' || other?.interval.kind !== 'interval')
            throw new Error('no limits');
          expect(other.interval.low).toBeCloseTo(1 - step.interval.high, 9);
        });
      }),
    );
  });

  it('keeps limits within 0 and 1 and around the estimate', () => {
    fc.assert(
      fc.property(
        followUps,
        fc.constantFrom('independent' as const, 'clustered' as const),
        (rows, variance) => {
          for (const cause of incidence(rows, variance).causes) {
            for (const { incidence: estimate, interval } of cause.steps) {
              if (interval.kind === 'cannot-compute') continue;
              expect(interval.low).toBeGreaterThanOrEqual(0);
              expect(interval.low).toBeLessThanOrEqual(estimate + 1e-12);
              expect(interval.high).toBeGreaterThanOrEqual(estimate - 1e-12);
              expect(interval.high).toBeLessThanOrEqual(1);
            }
          }
        },
      ),
    );
  });

  it('finds the ratio-of-sums variance by run when every unit is watched to the same day', () => {
    // With nothing censored the incidence is a ratio of sums, whose cluster variance is a textbook one.
    const runs = [
      [8, 1],
      [8, 3],
      [8, 0],
      [8, 4],
    ] as const;
    const rows = runs.flatMap(([units, events], run): FollowUp[] => [
      { time: 5, cause: 'contaminated', count: events, cluster: `run ${run}` },
      { time: 9, cause: null, count: units - events, cluster: `run ${run}` },
    ]);
    const p = 8 / 32;
    const squares = runs.reduce((sum, [units, events]) => sum + (events - p * units) ** 2, 0);
    const expected = Math.sqrt(((4 / 3) * squares) / 32 ** 2);
    expect(incidence(rows, 'clustered').causes[0]?.steps[0]?.standardError).toBeCloseTo(expected, 12);
  });

  it('gives the published survival of the leukaemia patients on 6-mercaptopurine', () => {
    // Freireich et al. (1963), as printed in Cox & Oakes (1984) and many textbooks (from memory).
    const times = [6, 6, 6, 7, 10, 13, 16, 22, 23];
    const open = [6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35];
    const rows: FollowUp[] = [
      ...times.map((time) => ({ time, cause: 'relapse' })),
      ...open.map((time) => ({ time, cause: null })),
    ];
    const fitted = curve(rows);
    const at = (time: number) => fitted.steps.find((step) => step.time === time);
    expect(at(6)?.survival).toBeCloseTo(0.857, 3);
    expect(at(10)?.survival).toBeCloseTo(0.753, 3);
    expect(at(23)?.survival).toBeCloseTo(0.448, 3);
    expect(at(6)?.standardError).toBeCloseTo(0.0764, 4);
    expect(at(23)?.standardError).toBeCloseTo(0.1346, 4);
    expect(timeQuantile(fitted, 0.5)).toMatchObject({ estimate: 23 });
  });

  it('takes the middle of a flat stretch for a median that lies on it', () => {
    const rows = [2, 4, 8, 9].map((time) => ({ time, cause: 'contaminated' }));
    expect(timeQuantile(curve(rows), 0.5).estimate).toBe(6);
    expect(timeQuantile(curve(rows), 0.9).estimate).toBe(9);
    const open = rows.map((row) => ({ ...row, cause: null }));
    expect(timeQuantile(curve(open), 0.5).estimate).toMatchObject({ reason: 'out-of-range' });
  });

  it('reads an incidence between two looks and refuses to read beyond the watching', () => {
    const rows = [
      { time: 4, cause: 'contaminated' },
      { time: 10, cause: null },
      { time: 12, cause: null },
    ];
    const answer = incidence(rows);
    expect(incidenceAt(answer, 'contaminated', 7)).toMatchObject({ estimate: 1 / 3, atRisk: 2, events: 1 });
    expect(incidenceAt(answer, 'contaminated', 2)).toMatchObject({ estimate: 0, atRisk: 3 });
    expect(incidenceAt(answer, 'contaminated', 13)).toMatchObject({ reason: 'out-of-range' });
    expect(incidenceAt(answer, 'frozen', 7)).toMatchObject({ reason: 'no-data' });
  });

  it('gives an upper limit where nothing has been found yet, wider for units of a few runs', () => {
    const rows = Array.from({ length: 12 }, (_, index) => ({
      time: 14,
      cause: null,
      cluster: `run ${index % 3}`,
    }));
    const limit = (variance: 'independent' | 'clustered') => {
      const at = incidenceAt(incidence(rows, variance), 'contaminated', 14);
      if (at.kind === 'cannot-compute' || at.interval.kind === 'cannot-compute') throw new Error('no limit');
      expect(at.interval.low).toBe(0);
      return at.interval.high;
    };
    // The exact limit for 0 of 12: 1 - 0.025^(1/12).
    expect(limit('independent')).toBeCloseTo(0.2646, 4);
    expect(limit('clustered')).toBeGreaterThan(limit('independent'));
  });

  it('says so when all units share one run, and names what is missing or wrong', () => {
    const rows = [
      { time: 4, cause: 'contaminated', cluster: 'run 1' },
      { time: 9, cause: null, cluster: 'run 1' },
    ];
    expect(incidence(rows, 'clustered').causes[0]?.steps[0]?.interval).toMatchObject({
      reason: 'too-few-clusters',
    });
    expect(() => incidence([{ time: 4, cause: null }], 'clustered')).toThrow(/cluster/);
    expect(() => incidence([{ time: -1, cause: null }])).toThrow(/time/);
    expect(() => incidence([{ time: Number.NaN, cause: null }])).toThrow(/time/);
    expect(() => incidence([{ time: 1, cause: null, count: 1.5 }])).toThrow(/count/);
    expect(kaplanMeier([], { level: 0.95, transform: 'log', variance: 'independent' })).toMatchObject({
      reason: 'no-data',
    });
  });
});
