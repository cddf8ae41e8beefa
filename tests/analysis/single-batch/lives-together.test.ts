import { describe, expect, it } from 'vitest';
import { type LaterLife, laterYield } from '@/lib/analysis/single-batch/later-lives';
import { type FirstLife, livesTogether } from '@/lib/analysis/single-batch/lives-together';

const life = (batchId: string, freshGrams: number, sources: LaterLife['sources']): LaterLife => ({
  batchId,
  freshGrams,
  open: false,
  sources,
});
const from = (batchId: string, units: number, unitCount: number, dryGrams: number | null) => ({
  ...{ batchId, units, unitCount, dryGrams },
});
const first: FirstLife = {
  ...{ id: 'a', code: 'KTR-7', isBed: false, units: 20, dryGrams: 10_000, dryAssumed: false, open: false },
  freshGrams: 6_000,
};
const asOf = '2026-07-20T15:00:00.000Z';

describe('the yield of later lives', () => {
  it('belongs wholly to the one batch it came from, however many of its units went on', () => {
    expect(laterYield('a', [life('b', 900, [from('a', 12, 20, 10_000)])])).toEqual({
      ...{ grams: 900, shared: false, anyOpen: false },
    });
  });

  it('is shared among several batches by the dry mass that moved', () => {
    const bed = life('b', 2_000, [from('a', 10, 20, 12_000), from('x', 10, 10, 4_000)]);
    expect(laterYield('a', [bed])).toMatchObject({ grams: 1_200, shared: true });
    expect(laterYield('x', [bed])).toMatchObject({ grams: 800, shared: true });
  });

  it('is shared by units where a dry mass is not known', () => {
    const bed = life('b', 2_000, [from('a', 15, 20, 12_000), from('x', 5, 10, null)]);
    expect(laterYield('a', [bed]).grams).toBe(1_500);
  });

  it('follows a chain of lives with the same parts', () => {
    const second = life('b', 2_000, [from('a', 10, 20, 12_000), from('x', 10, 10, 4_000)]);
    const third = life('c', 500, [from('b', 1, 1, null)]);
    expect(laterYield('a', [second, third]).grams).toBe(1_200 + 300);
  });

  it('ends where records run in a circle', () => {
    const circle = [life('b', 100, [from('c', 1, 1, null)]), life('c', 100, [from('b', 1, 1, null)])];
    expect(laterYield('a', circle).grams).toBe(0);
  });
});

describe('first and second life together', () => {
  it('are 6 kg and 900 g over 10 kg dry, 69 %, with the first life unchanged', () => {
    const lives = livesTogether(first, [life('b', 900, [from('a', 12, 20, 10_000)])], asOf);
    expect(lives).toMatchObject({ firstGrams: 6_000, laterGrams: 900, togetherGrams: 6_900 });
    expect(lives.perDryGramOfFirst).toMatchObject({
      kind: 'figure',
      value: 69,
      method: { code: 'sum' },
      parts: { numerator: 6_900, denominator: 10_000, unit: 'grams' },
      marks: [],
    });
  });

  it('are not known where a part grows at a site that the reader cannot see', () => {
    const hidden = { ...life('b', 0, [from('a', 12, 20, 10_000)]), freshGrams: null };
    expect(livesTogether(first, [hidden], asOf)).toMatchObject({
      laterGrams: null,
      togetherGrams: null,
      perDryGramOfFirst: { kind: 'cannot', reason: 'other-site-unseen' },
    });
  });

  it('are not divided by a dry mass that is not known, nor for a bed', () => {
    const lives = [life('b', 900, [from('a', 12, 20, null)])];
    expect(livesTogether({ ...first, dryGrams: null }, lives, asOf).perDryGramOfFirst).toMatchObject({
      leftOut: [{ reason: 'no-dry-mass' }],
    });
    expect(livesTogether({ ...first, isBed: true }, lives, asOf).perDryGramOfFirst).toMatchObject({
      reason: 'beds-have-no-be',
    });
  });

  it('say when they are not over, rest on an assumption, or were shared out', () => {
    const bed = life('b', 2_000, [from('a', 10, 20, 12_000), from('x', 10, 10, 4_000)]);
    const lives = livesTogether({ ...first, dryAssumed: true, open: true }, [bed], asOf);
    expect(lives.perDryGramOfFirst.marks).toEqual(['shared-among-sources', 'still-open', 'assumed-moisture']);
  });
});
