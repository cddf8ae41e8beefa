import { expect, test } from 'vitest';
import { type ComparedRow, compareOne } from '@/lib/analysis/comparison/compare';
import { contaminationRange } from '@/lib/ui/comparison/comparison-sentence';
import { judgedOn, oysterBags } from '../../analysis/bags-of';
import { contaminationHistory } from '../figure/contaminated-bags';

const empty = compareOne(judgedOn([]), oysterBags, '2026-07-01T00:00:00Z');
const row = (method: string, value: number): ComparedRow => ({
  ...empty,
  method,
  contamination: {
    ...contaminationHistory,
    kind: 'figure',
    value,
    interval: { kind: 'none', reason: 'not-enough-data' },
  },
});
const counted = (method: string): ComparedRow => ({
  ...empty,
  method,
  contamination: { ...contaminationHistory, kind: 'counts', reason: 'too-few-sites' },
});

test('methods are told from the one that lost least to the one that lost most, those without an estimate left out', () => {
  const rows = [row('lime', 14), counted('steam'), row('bath', 12), row('ferment', 20)];
  expect(contaminationRange(rows)).toEqual({ low: 12, lowest: 'bath', high: 20, highest: 'ferment' });
});

test('one method alone is no comparison', () => {
  expect(contaminationRange([row('bath', 12), counted('steam')])).toBeUndefined();
});
