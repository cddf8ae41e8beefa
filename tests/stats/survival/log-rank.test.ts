import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logRank } from '@/lib/stats/survival/log-rank';
import { quadraticForm } from '@/lib/stats/survival/quadratic-form';

const rows = fc.array(
  fc.record({
    time: fc.integer({ min: 1, max: 20 }),
    cause: fc.constantFrom(null, 'contaminated'),
    group: fc.constantFrom('lime', 'steam', 'cold'),
    cluster: fc.integer({ min: 1, max: 9 }).map(String),
    count: fc.integer({ min: 1, max: 3 }),
  }),
  { minLength: 6, maxLength: 40 },
);

describe('logRank', () => {
  it('does not depend on the order of records, the names of groups or the splitting into units', () => {
    fc.assert(
      fc.property(
        rows,
        fc.constantFrom('independent' as const, 'clustered' as const),
        (records, variance) => {
          const renamed = { lime: 'x', steam: 'a', cold: 'm' };
          const other = records
            .flatMap(({ count, ...record }) => Array.from({ length: count }, () => record))
            .reverse()
            .map((record) => ({ ...record, group: renamed[record.group] }));
          const [one, two] = [logRank(records, variance), logRank(other, variance)];
          expect(two.kind).toBe(one.kind);
          if (one.kind !== 'test' || two.kind !== 'test') return;
          if (one.statistic < 1e6) expect(two.statistic).toBeCloseTo(one.statistic, 5);
          expect(two.degreesOfFreedom).toBe(one.degreesOfFreedom);
        },
      ),
    );
  });

  it('expects as many events in all groups together as there were', () => {
    fc.assert(
      fc.property(rows, (records) => {
        const test = logRank(records, 'independent');
        if (test.kind !== 'test') return;
        const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
        expect(sum(test.expected)).toBeCloseTo(sum(test.observed), 9);
      }),
    );
  });

  it('gives the published test of the leukaemia patients', () => {
    // Freireich et al. (1963); chi-square 16.79 with 19.25 relapses expected on 6-MP (textbooks, from memory).
    const record = (group: string, cause: string | null) => (time: number) => ({ time, cause, group });
    const records = [
      ...[6, 6, 6, 7, 10, 13, 16, 22, 23].map(record('6-MP', 'relapse')),
      ...[6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35].map(record('6-MP', null)),
      ...[1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23].map(
        record('control', 'relapse'),
      ),
    ];
    const test = logRank(records, 'independent');
    expect(test).toMatchObject({ statistic: expect.closeTo(16.79, 2), degreesOfFreedom: 1, units: 42 });
    if (test.kind === 'test') expect(test.expected[0]).toBeCloseTo(19.25, 2);
  });

  it('is far less sure of a difference that a few runs carry when it knows the runs', () => {
    const records = ['lime', 'steam'].flatMap((group, method) =>
      Array.from({ length: 40 }, (_, index) => {
        const run = Math.floor(index / 10);
        const bad = method === 0 && run === 0;
        return {
          time: bad ? 5 + (index % 3) : 20,
          cause: bad ? 'contaminated' : null,
          group,
          cluster: `${group} ${run}`,
        };
      }),
    );
    const pValue = (variance: 'independent' | 'clustered') => {
      const test = logRank(records, variance);
      if (test.kind !== 'test') throw new Error(test.explanation);
      return test.pValue;
    };
    expect(pValue('independent')).toBeLessThan(0.002);
    expect(pValue('clustered')).toBeGreaterThan(0.2);
  });

  it('says why there is no test', () => {
    const one = { time: 3, cause: 'contaminated', group: 'lime', cluster: '1' };
    expect(logRank([one], 'independent')).toMatchObject({ reason: 'no-variation' });
    expect(logRank([one, { ...one, group: 'steam', cause: null, cluster: '2' }], 'clustered')).toMatchObject({
      reason: 'too-few-clusters',
    });
    expect(logRank([], 'independent')).toMatchObject({ reason: 'no-variation' });
    expect(() => logRank([{ time: 3, cause: null, group: 'lime' }], 'clustered')).toThrow(/cluster/);
  });
});

describe('quadraticForm', () => {
  it('solves with the matrix it is given and sees that one has no inverse', () => {
    const matrix = [
      [4, 2],
      [2, 3],
    ];
    // M^-1 = [[3, -2], [-2, 4]] / 8, so (1, 2) gives (3 - 8 + 16) / 8.
    expect(quadraticForm(matrix, [1, 2])).toBeCloseTo(11 / 8, 14);
    expect(
      quadraticForm(
        [
          [1, 1],
          [1, 1],
        ],
        [1, 2],
      ),
    ).toBeNull();
  });
});
