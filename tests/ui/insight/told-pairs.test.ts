import { expect, test } from 'vitest';
import type { MethodPair } from '@/lib/analysis/method-question/methods-answer';
import { toldPairs } from '@/lib/ui/insight/told-pairs';
import { contaminationHistory } from '../figure/contaminated-bags';
import { sentenceWords } from './sentence-words';

const points: MethodPair['points'] = {
  ...contaminationHistory,
  kind: 'figure',
  value: 1,
  interval: { kind: 'interval', low: -1, high: 3, level: 0.95, method: 'binomial-mixed' },
};
const pair = (first: string, second: string, verdict: MethodPair['verdict']): MethodPair => ({
  ...{ first, second, verdict, points, rawPoints: null, why: null, would: null },
  ...{ yieldPoints: points, yieldVerdict: 'cannot-tell', yieldWould: null },
  ...{ croppedPercent: null, croppedTells: false },
});

const pairs = [
  pair('bath', 'ferment', 'fewer'),
  pair('bath', 'lime', 'fewer'),
  pair('bath', 'steam', 'cannot-tell'),
  pair('ferment', 'lime', 'more'),
  pair('ferment', 'steam', 'more'),
  pair('lime', 'steam', 'more'),
];

test('the method that loses more than most others comes first, and pairs that cannot be told apart are named', () => {
  expect(toldPairs(pairs, sentenceWords('en'))).toEqual([
    'Ferment loses more than bath, lime, and steam.',
    'Lime loses more than bath and steam.',
    'Not told apart: bath or steam.',
  ]);
  expect(toldPairs(pairs, sentenceWords('es'))[1]).toBe('Con lime se pierde más que con bath y steam.');
});

test('one pair is its own sentence and needs no other', () => {
  expect(toldPairs(pairs.slice(0, 1), sentenceWords('en'))).toEqual([]);
});
