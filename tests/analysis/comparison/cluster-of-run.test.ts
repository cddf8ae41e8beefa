import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clusterOfRun } from '@/lib/analysis/comparison/cluster-of-run';

function groups(batches: readonly { id: string; runIds: readonly string[] }[]): string[][] {
  const byLabel = new Map<string, string[]>();
  for (const [id, label] of clusterOfRun(batches)) byLabel.set(label, [...(byLabel.get(label) ?? []), id]);
  return [...byLabel.values()].map((ids) => ids.sort()).sort();
}

describe('clusters by treatment run', () => {
  it('puts batches of one run together and leaves untreated ones alone', () => {
    const batches = [
      { id: 'a', runIds: ['bath'] },
      { id: 'b', runIds: ['bath'] },
      { id: 'c', runIds: [] },
      { id: 'd', runIds: [] },
    ];
    expect(groups(batches)).toEqual([['a', 'b'], ['c'], ['d']]);
  });

  it('joins batches that share no run through a third one that used both', () => {
    const batches = [
      { id: 'a', runIds: ['bath'] },
      { id: 'b', runIds: ['soak'] },
      { id: 'c', runIds: ['soak', 'bath'] },
      { id: 'd', runIds: ['steam'] },
    ];
    expect(groups(batches)).toEqual([['a', 'b', 'c'], ['d']]);
  });

  it('gives the same clusters and labels in any order of batches and runs', () => {
    const run = fc.constantFrom('r1', 'r2', 'r3', 'r4', 'r5', 'r6');
    const lists = fc.array(fc.uniqueArray(run, { maxLength: 3 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(lists, (runs) => {
        const batches = runs.map((runIds, index) => ({ id: `b${index}`, runIds }));
        const turned = batches.map(({ id, runIds }) => ({ id, runIds: runIds.toReversed() })).reverse();
        expect(new Map(clusterOfRun(turned))).toEqual(new Map(clusterOfRun(batches)));
      }),
    );
  });
});
