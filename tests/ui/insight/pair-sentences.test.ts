import { createTranslator } from 'next-intl';
import { expect, test } from 'vitest';
import type { MethodPair } from '@/lib/analysis/method-question/methods-answer';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import { formatNumber } from '@/lib/ui/format/number-text';
import type { InsightWords } from '@/lib/ui/insight/insight-words';
import { pairSentence, yieldSentences } from '@/lib/ui/insight/pair-sentences';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { contaminationHistory } from '../figure/contaminated-bags';

const words = {
  t: createTranslator({ locale: 'en-US', messages: loadMessages('en'), namespace: 'insight' }),
  names: { siteName: (id: string) => id },
  inSentence: (method: string) => method,
  units: 'bags',
  number: (value: number, digits = 0) => formatNumber(value, 'en-US', digits),
} as unknown as InsightWords;

const between = (low: number, high: number): ShownFigure => ({
  ...contaminationHistory,
  kind: 'figure',
  value: (low + high) / 2,
  interval: { kind: 'interval', low, high, level: 0.95, method: 'binomial-mixed' },
});

const pair = (changes: Partial<MethodPair>): MethodPair => ({
  first: 'lime',
  second: 'bath',
  rawPoints: null,
  points: between(-4, 6),
  verdict: 'cannot-tell',
  why: null,
  would: null,
  yieldPoints: between(-9, 3),
  yieldVerdict: 'cannot-tell',
  yieldWould: { kind: 'batches', method: 'lime', batches: 1, siteId: 'Mill Lane', points: 10 },
  croppedPercent: null,
  ...changes,
});

test('limits stand in one writing, with a decimal where one of them is near nothing', () => {
  expect(pairSentence(pair({}), words)).toContain('between −4 and 6 bags in 100');
  expect(pairSentence(pair({ points: between(-0.7, 10.8) }), words)).toContain('between −0.7 and 10.8 bags');
});

test('an interval that leaves out nothing, and still does not tell, says why', () => {
  expect(pairSentence(pair({ points: between(2, 9) }), words)).toMatch(/looked at alone .* by chance/);
  const [alone] = yieldSentences(pair({ yieldPoints: between(-13, -3) }), words);
  expect(alone).toMatch(/looked at alone, bath gives 3 to 13 points .* more than lime/);
});

test('what would tell is said of the yield, too', () => {
  expect(yieldSentences(pair({}), words)).toEqual([
    'In yield the two cannot be told apart yet (−9 to 3 points of biological efficiency, total losses counting as 0). About 1 more batch of lime at Mill Lane would tell a difference of 10 points.',
  ]);
});

test('a crop that differs by no more than chance is not called more or less without saying so', () => {
  const said = (low: number, high: number) =>
    yieldSentences(pair({ croppedPercent: { estimate: -8, low, high } }), words)[1];
  expect(said(-18, 4)).toContain('which may be chance');
  expect(said(-18, -4)).not.toContain('chance');
});
