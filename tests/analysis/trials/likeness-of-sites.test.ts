import { describe, expect, it } from 'vitest';
import type { JudgedBatch } from '@/lib/analysis/comparison/judged-batch';
import { usualRuns } from '@/lib/analysis/trials/usual-runs';

/** Twenty bags of a run at a site of which so many were lost. */
function bags(siteId: string, runCluster: string, byWindowEnd: number): JudgedBatch {
  return {
    facts: { siteId },
    contamination: { kind: 'counted', byWindowEnd, units: 20 },
    yield: { kind: 'left-out', reason: 'window-open' },
    runCluster,
  } as unknown as JudgedBatch;
}

const telling = [bags('mill', 'first', 12), bags('mill', 'second', 1)];

describe('how alike units of one run are', () => {
  it('rests on the sites that have two runs, in which some units were lost and some not', () => {
    const { likeness, likenessSites } = usualRuns(telling);
    expect(likenessSites).toBe(1);
    expect(likeness).toBeGreaterThan(0.2);
    const others = [
      ...[bags('single', 'third', 5), bags('single', 'third', 2)],
      ...[bags('spared', 'fourth', 0), bags('spared', 'fifth', 0)],
      ...[bags('lost', 'sixth', 20), bags('lost', 'seventh', 20)],
    ];
    expect(usualRuns([...telling, ...others])).toMatchObject({ likeness, likenessSites });
  });

  it('is unknown where no site tells it', () => {
    expect(usualRuns([bags('single', 'third', 5)])).toMatchObject({ likeness: null, likenessSites: 0 });
  });
});
