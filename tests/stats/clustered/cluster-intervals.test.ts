import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { intraclassCorrelation } from '@/lib/stats/clustered/intraclass-correlation';
import { kornGraubardInterval } from '@/lib/stats/clustered/korn-graubard-interval';
import { logitInterval } from '@/lib/stats/clustered/logit-interval';
import { overdispersionTest } from '@/lib/stats/clustered/overdispersion-test';
import { raoScottInterval } from '@/lib/stats/clustered/rao-scott-interval';
import { wilsonInterval } from '@/lib/stats/proportion/wilson-interval';
import { clusterRows, columns, rearranged, weilControl, weilTreated } from './clustered-rows';

const level = 0.95;
const alike = { events: [2, 2, 2], trials: [10, 10, 10], level };
const none = { events: [0, 0, 0], trials: [10, 12, 9], level };
const single = { events: [3], trials: [20], level };

describe('raoScottInterval', () => {
  it('is the Wilson interval of independent units when the design effect is floored at 1', () => {
    const answer = raoScottInterval({ ...alike, floor: true });
    const plain = wilsonInterval(6, 30, level);
    if (answer.kind !== 'estimate' || plain.kind !== 'interval') throw new Error('no interval');
    expect(answer.interval.low).toBeCloseTo(plain.low, 12);
    expect(answer.interval.high).toBeCloseTo(plain.high, 12);
  });

  it('has no effective size where clusters are all alike and nothing is floored', () => {
    expect(raoScottInterval({ ...alike, floor: false })).toMatchObject({ reason: 'no-variation' });
  });
});

describe('kornGraubardInterval', () => {
  it('rests on fewer units than there are, and lies about the estimate', () => {
    const answer = kornGraubardInterval({ ...weilTreated, level });
    if (answer.kind !== 'estimate') throw new Error('no interval');
    expect(answer.effectiveTrials).toBeLessThan(145 / 3.952861);
    expect(answer.interval.low).toBeLessThan(answer.estimate);
    expect(answer.interval.high).toBeGreaterThan(answer.estimate);
  });
});

describe('intervals that need a spread between clusters', () => {
  it('answer one cluster, the same outcome throughout and no rows by their reason', () => {
    for (const of of [
      logitInterval,
      kornGraubardInterval,
      (rows: typeof single) => raoScottInterval({ ...rows, floor: true }),
      intraclassCorrelation,
      overdispersionTest,
    ]) {
      expect(of(single)).toMatchObject({ reason: 'too-few-clusters' });
      expect(of(none)).toMatchObject({ reason: 'no-variation' });
      expect(of({ events: [], trials: [], level })).toMatchObject({ reason: 'no-data' });
    }
  });

  it('do not depend on the order of rows, on their being split, or on the names of clusters', () => {
    fc.assert(
      fc.property(clusterRows, (rows) => {
        const [one, other] = [columns(rows), columns(rearranged(rows))];
        const logits = [logitInterval(one), logitInterval(other)];
        if (logits[0]?.kind === 'interval' && logits[1]?.kind === 'interval') {
          expect(logits[1].low).toBeCloseTo(logits[0].low, 10);
          expect(logits[1].high).toBeCloseTo(logits[0].high, 10);
        } else expect(logits[1]).toEqual(logits[0]);
        const correlations = [intraclassCorrelation(one), intraclassCorrelation(other)];
        if (typeof correlations[0] === 'number') {
          expect(Number(correlations[1])).toBeCloseTo(correlations[0], 10);
        } else expect(correlations[1]).toEqual(correlations[0]);
        const tests = [overdispersionTest(one), overdispersionTest(other)];
        if (tests[0]?.kind === 'test' && tests[1]?.kind === 'test') {
          expect(tests[1].pearson.statistic).toBeCloseTo(tests[0].pearson.statistic, 8);
        } else expect(tests[1]).toEqual(tests[0]);
      }),
    );
  });
});

describe('intraclassCorrelation', () => {
  it('is 1 where every cluster is all or nothing, and negative where clusters are more alike than chance', () => {
    expect(intraclassCorrelation({ events: [10, 0, 10, 0], trials: [10, 10, 10, 10] })).toBeCloseTo(1, 12);
    expect(Number(intraclassCorrelation(alike))).toBeCloseTo(-1 / 9, 12);
  });

  it('cannot be told from clusters of one unit', () => {
    expect(intraclassCorrelation({ events: [1, 0, 1], trials: [1, 1, 1] })).toMatchObject({
      reason: 'not-identifiable',
    });
  });
});

describe('overdispersionTest', () => {
  it('speaks for litters of treated rats that differ, and not for those of the controls', () => {
    const [treated, control] = [overdispersionTest(weilTreated), overdispersionTest(weilControl)];
    if (treated.kind !== 'test' || control.kind !== 'test') throw new Error('no test');
    expect(treated.pearson.pValue).toBeLessThan(0.001);
    expect(control.pearson.pValue).toBeGreaterThan(0.05);
  });

  it("leaves Tarone's Z open for clusters of one unit", () => {
    const answer = overdispersionTest({ events: [1, 0, 0, 1], trials: [1, 1, 1, 1] });
    if (answer.kind !== 'test') throw new Error('no test');
    expect(answer.tarone).toMatchObject({ reason: 'not-identifiable' });
  });
});
