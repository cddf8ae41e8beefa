import { describe, expect, it } from 'vitest';
import {
  type ClusteredComparison,
  compareClusteredProportions,
} from '@/lib/stats/clustered/compare-clustered-proportions';
import { weilControl, weilTreated } from './clustered-rows';

/** Events are the dead, as in the source. */
const rats = {
  events: [...dead(weilControl), ...dead(weilTreated)],
  trials: [...weilControl.trials, ...weilTreated.trials],
  group: [...weilControl.trials.map(() => 'control'), ...weilTreated.trials.map(() => 'treated')],
  level: 0.95,
};

function dead({ events, trials }: { events: number[]; trials: number[] }): number[] {
  return trials.map((units, row) => units - (events[row] ?? 0));
}

function comparisonOf(rows: Parameters<typeof compareClusteredProportions>[0]): ClusteredComparison {
  const answer = compareClusteredProportions(rows);
  if (answer.kind !== 'estimate') throw new Error(`no comparison: ${answer.explanation}`);
  return answer;
}

describe('compareClusteredProportions', () => {
  it("finds the design effects of Weil's rats that Rao & Scott (1992, Biometrics 48:577-585, table 1) print", () => {
    const { groups } = comparisonOf(rats);
    expect(groups.map(({ group }) => group)).toEqual(['control', 'treated']);
    expect(groups[0]?.designEffect).toBeCloseTo(1.232495, 6);
    expect(groups[1]?.designEffect).toBeCloseTo(3.952861, 6);
  });

  it('turns the difference over and keeps the tests when the groups change places', () => {
    const one = comparisonOf(rats);
    const other = comparisonOf({
      ...rats,
      events: rats.events.toReversed(),
      trials: rats.trials.toReversed(),
      group: rats.group.toReversed(),
    });
    if (!('newcombe' in one.difference) || !('newcombe' in other.difference))
      throw new Error('no difference');
    expect(other.difference.estimate).toBeCloseTo(-one.difference.estimate, 12);
    expect(other.difference.wald.low).toBeCloseTo(-one.difference.wald.high, 12);
    expect(other.separate.pValue).toBeCloseTo(one.separate.pValue, 12);
    expect(other.pooled.pValue).toBeCloseTo(one.pooled.pValue, 12);
    expect(other.secondOrder.pValue).toBeCloseTo(one.secondOrder.pValue, 12);
  });

  it('speaks less loudly than a test that takes the units as independent', () => {
    const answer = comparisonOf(rats);
    const plain = comparisonOf({
      ...rats,
      events: rats.events.flatMap((count, row) => units(count, rats.trials[row] ?? 0)),
      trials: rats.trials.flatMap((count) => Array.from({ length: count }, () => 1)),
      group: rats.group.flatMap((name, row) => Array.from({ length: rats.trials[row] ?? 0 }, () => name)),
    });
    expect(answer.separate.pValue).toBeGreaterThan(plain.separate.pValue);
    expect(answer.secondOrder.pValue).toBeGreaterThan(plain.secondOrder.pValue);
  });

  it('gives a single difference for two groups only', () => {
    const three = { events: [1, 3, 2, 5, 4, 6], trials: [9, 9, 9, 9, 9, 9], level: 0.95 };
    const answer = comparisonOf({ ...three, group: ['a', 'a', 'b', 'b', 'c', 'c'] });
    expect(answer.difference).toMatchObject({ kind: 'cannot-compute', reason: 'out-of-range' });
  });

  it('answers thin groups by their reason', () => {
    const rows = { events: [1, 3, 2], trials: [9, 9, 9], level: 0.95 };
    expect(compareClusteredProportions({ ...rows, group: ['a', 'a', 'b'] })).toMatchObject({
      reason: 'too-few-clusters',
    });
    expect(compareClusteredProportions({ ...rows, group: ['a', 'a', 'a'] })).toMatchObject({
      reason: 'no-data',
    });
    const clean = { events: [0, 0, 2, 3], trials: [9, 9, 9, 9], group: ['a', 'a', 'b', 'b'], level: 0.95 };
    expect(compareClusteredProportions(clean)).toMatchObject({ reason: 'no-variation' });
  });

  it('refuses a cluster that is in two groups, and a group list of another length', () => {
    const rows = { events: [1, 3], trials: [9, 9], level: 0.95 };
    expect(() =>
      compareClusteredProportions({ ...rows, cluster: ['run 1', 'run 1'], group: ['a', 'b'] }),
    ).toThrow(/^group\[1\].*run 1/);
    expect(() => compareClusteredProportions({ ...rows, group: ['a'] })).toThrow(/^group/);
  });
});

function units(events: number, trials: number): number[] {
  return Array.from({ length: trials }, (_, unit) => (unit < events ? 1 : 0));
}
