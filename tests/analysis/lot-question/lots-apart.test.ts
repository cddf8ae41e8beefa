import { expect, test } from 'vitest';
import type { JudgedOrigin } from '@/lib/analysis/lot-question/judged-origin';
import { lotsApart } from '@/lib/analysis/lot-question/lots-apart';

const lot = (origin: string, verdict: JudgedOrigin['verdict']): JudgedOrigin => ({
  ...{ origin, verdict, lots: 1, batches: 12, sites: 4, units: 200, observed: 30, expected: 20 },
  ...{ ratio: 1.5, low: 1, high: 2, falseDiscovery: 0.5 },
});

const judged = (...origins: JudgedOrigin[]) => ({ kind: 'judged', origins, leftOut: 0 }) as const;

test('a lot called out is left out of its maker while it is less than half of its lots', () => {
  const makers = new Map(['a', 'b', 'c'].map((id) => [id, 'Larkmoor']));
  const some = judged(lot('a', 'loses-more'), lot('b', 'as-expected'), lot('c', 'as-expected'));
  expect(lotsApart(some, makers)).toEqual({ Larkmoor: ['a'] });
});

test('a maker half of whose lots or more are called out is judged with all of them', () => {
  const makers = new Map(['a', 'b'].map((id) => [id, 'Larkmoor']));
  expect(lotsApart(judged(lot('a', 'loses-more'), lot('b', 'as-expected')), makers)).toEqual({});
  expect(lotsApart(judged(lot('a', 'loses-more'), lot('b', 'loses-more')), makers)).toEqual({});
});

test('a lot without a maker is nobody’s, and nothing is left out where no lot could be judged', () => {
  expect(lotsApart(judged(lot('a', 'loses-more'), lot('b', 'as-expected')), new Map())).toEqual({});
  expect(lotsApart({ kind: 'cannot', reason: 'no-fit' }, new Map([['a', 'Larkmoor']]))).toEqual({});
});
