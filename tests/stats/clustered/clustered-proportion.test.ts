import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClusteredProportion, clusteredProportion } from '@/lib/stats/clustered/clustered-proportion';
import { ArgumentError } from '@/lib/stats/outcome';
import { wilsonInterval } from '@/lib/stats/proportion/wilson-interval';
import { clusterRows, columns, rearranged, weilControl, weilTreated } from './clustered-rows';

function estimateOf(rows: Parameters<typeof clusteredProportion>[0]): ClusteredProportion {
  const answer = clusteredProportion(rows);
  if (answer.kind !== 'estimate') throw new Error(`no estimate: ${answer.explanation}`);
  return answer;
}

function limitsOf(rows: Parameters<typeof clusteredProportion>[0]) {
  const { interval } = estimateOf(rows);
  if (interval.kind !== 'interval') throw new Error(`no interval: ${interval.explanation}`);
  return interval;
}

describe('clusteredProportion', () => {
  it("finds the design effects of Weil's rats that Rao & Scott (1992, Biometrics 48:577-585, table 1) print", () => {
    expect(estimateOf(weilControl).designEffect).toBeCloseTo(1.232495, 6);
    expect(estimateOf(weilTreated).designEffect).toBeCloseTo(3.952861, 6);
  });

  it('gives the estimate without an interval when all units share one cluster', () => {
    const answer = estimateOf({ events: [1, 2], trials: [10, 10], cluster: ['a', 'a'] });
    expect(answer.estimate).toBe(0.15);
    expect(answer.interval).toMatchObject({ kind: 'cannot-compute', reason: 'too-few-clusters' });
    expect(answer).toMatchObject({ rows: 2, clusters: 1 });
  });

  it('answers no rows and rows without units with a reason', () => {
    expect(clusteredProportion({ events: [], trials: [] })).toMatchObject({ reason: 'no-data' });
    expect(clusteredProportion({ events: [0, 0], trials: [0, 0] })).toMatchObject({ reason: 'no-data' });
  });

  it('leaves out and counts clusters without units', () => {
    const answer = estimateOf({ events: [3, 0, 5], trials: [20, 0, 18] });
    expect(answer).toMatchObject({ clusters: 2, emptyClusters: 1, events: 8, trials: 38 });
    expect(answer.interval).toEqual(limitsOf({ events: [3, 5], trials: [20, 18] }));
  });

  it('has a width at no events and at all events, and the one mirrors the other', () => {
    const trials = [10, 12, 7, 9];
    const none = limitsOf({ events: [0, 0, 0, 0], trials });
    const all = limitsOf({ events: trials, trials });
    expect(none.low).toBe(0);
    expect(none.high).toBeGreaterThan(wilsonHigh(0, 38));
    expect(all.high).toBe(1);
    expect(all.low).toBeCloseTo(1 - none.high, 9);
  });

  it('is the Wilson interval where every cluster is one unit, so that nothing is clustered', () => {
    const limits = limitsOf({ events: [1, 0, 0, 1, 0, 0, 0, 1], trials: [1, 1, 1, 1, 1, 1, 1, 1] });
    expect(limits.high).toBeCloseTo(wilsonHigh(3, 8), 9);
    expect(limits.low).toBeCloseTo(1 - wilsonHigh(5, 8), 9);
  });

  it('is wider than for independent units where clusters differ, and wider still at a higher level', () => {
    const rows = { events: [1, 9, 2, 12], trials: [20, 20, 20, 20] };
    const ninety = limitsOf({ ...rows, level: 0.9 });
    const usual = limitsOf(rows);
    expect(usual.level).toBe(0.95);
    expect(usual.high).toBeGreaterThan(wilsonHigh(24, 80));
    expect(usual.high).toBeGreaterThan(ninety.high);
    expect(usual.low).toBeLessThan(ninety.low);
  });

  it('stays within 0 to 1 about the estimate, however the events fall', () => {
    fc.assert(
      fc.property(clusterRows, (rows) => {
        const answer = clusteredProportion(columns(rows));
        if (answer.kind !== 'estimate' || answer.interval.kind !== 'interval') return;
        const { low, high } = answer.interval;
        expect(low).toBeGreaterThanOrEqual(0);
        expect(low).toBeLessThanOrEqual(answer.estimate);
        expect(high).toBeGreaterThanOrEqual(answer.estimate);
        expect(high).toBeLessThanOrEqual(1);
        expect(high - low).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });

  it('does not depend on the order of rows, on their being split, or on the names of clusters', () => {
    fc.assert(
      fc.property(clusterRows, (rows) => {
        const one = clusteredProportion(columns(rows));
        const other = clusteredProportion(columns(rearranged(rows)));
        expect(other.kind).toBe(one.kind);
        if (one.kind !== 'estimate' || other.kind !== 'estimate') return;
        expect(other.estimate).toBe(one.estimate);
        expect(other.clusters).toBe(one.clusters);
        if (one.interval.kind !== 'interval' || other.interval.kind !== 'interval') return;
        expect(other.interval.low).toBeCloseTo(one.interval.low, 9);
        expect(other.interval.high).toBeCloseTo(one.interval.high, 9);
      }),
      { numRuns: 60 },
    );
  });

  it('turns over when events and others change places', () => {
    fc.assert(
      fc.property(clusterRows, (rows) => {
        const turned = rows.map((row) => ({ ...row, events: row.trials - row.events }));
        const [one, other] = [clusteredProportion(columns(rows)), clusteredProportion(columns(turned))];
        if (one.kind !== 'estimate' || one.interval.kind !== 'interval') return;
        if (other.kind !== 'estimate' || other.interval.kind !== 'interval') throw new Error('no interval');
        expect(other.interval.low).toBeCloseTo(1 - one.interval.high, 8);
        expect(other.interval.high).toBeCloseTo(1 - one.interval.low, 8);
      }),
      { numRuns: 40 },
    );
  });

  it('answers clusters of a billion units without listing them', () => {
    const many = Array.from({ length: 60 }, () => 1e9);
    const { low, high } = limitsOf({ events: many.map((units) => 0.3 * units), trials: many });
    expect(low).toBeGreaterThan(0.2999);
    expect(high).toBeLessThan(0.3001);
  });

  it('names the argument that no data set can have', () => {
    const ask = (rows: Parameters<typeof clusteredProportion>[0]) => () => clusteredProportion(rows);
    expect(ask({ events: [5], trials: [4] })).toThrow(/^events\[0\]/);
    expect(ask({ events: [Number.NaN], trials: [4] })).toThrow(/^events\[0\]/);
    expect(ask({ events: [0], trials: [-4] })).toThrow(/^trials\[0\]/);
    expect(ask({ events: [1.5], trials: [4] })).toThrow(/^events\[0\]/);
    expect(ask({ events: [1, 2], trials: [4] })).toThrow(/^trials/);
    expect(ask({ events: [1], trials: [4], cluster: [] })).toThrow(/^cluster/);
    expect(ask({ events: [1], trials: [4], level: 1 })).toThrow(ArgumentError);
    expect(ask({ events: [1], trials: [4], level: 95 })).toThrow(/^level/);
  });
});

function wilsonHigh(events: number, trials: number): number {
  const interval = wilsonInterval(events, trials, 0.95);
  return interval.kind === 'interval' ? interval.high : Number.NaN;
}
