import { expect, test } from 'vitest';
import { rowsBehind } from '@/lib/ui/insight/rows-behind';

test('what is expected of a method leads a coordinator to the batches that were counted, and a member nowhere', () => {
  const figure = { rowsQuery: 'from=2023-11-01&method=bath' };
  expect(rowsBehind(figure, true)).toEqual({ rows: '/comparison/rows?from=2023-11-01&method=bath' });
  expect(rowsBehind(figure, false)).toEqual({});
  expect(rowsBehind({ rowsQuery: '' }, true)).toEqual({});
});
