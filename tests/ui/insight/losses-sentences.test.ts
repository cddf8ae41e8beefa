import { expect, test } from 'vitest';
import type { LossesAnswer, LossSource, SourceShare } from '@/lib/analysis/loss-question/losses-answer';
import { lossesSentences, yieldSentence } from '@/lib/ui/insight/losses-sentences';
import { contaminationHistory } from '../figure/contaminated-bags';
import { sentenceWords } from './sentence-words';

const words = sentenceWords('en');
const palabras = sentenceWords('es');

const share = (source: LossSource, estimate: number, low: number, high: number): SourceShare => ({
  kind: 'share',
  source,
  levels: 12,
  percent: { estimate, low, high },
  told: low > 0,
  figure: {
    ...contaminationHistory,
    kind: 'figure',
    value: estimate,
    interval: { kind: 'interval', low, high, level: 0.95, method: 'contamination-shares' },
  },
});

const answer = (...sources: SourceShare[]): LossesAnswer => ({
  contamination: { kind: 'shares', batches: 120, sources },
  yield: { kind: 'shares', batches: 90, sources },
  examples: [],
  chanceRatio: null,
  typicalUnits: 12,
});

const rest = share('rest', 60, 50, 70);

test('a share that matters is never written with a limit of zero', () => {
  const near = answer(share('site', 5.2, 0.4, 13.1), share('run', 20, 9, 31), rest);
  expect(lossesSentences(near, words)[0]).toContain(
    '20 with the treatment run (9 to 31) and 5.2 with the site (0.4 to 13.1)',
  );
  expect(yieldSentence(near.yield, palabras)).toContain('5.2 con el sitio (de 0.4 a 13.1)');
  const nearer = answer(share('site', 5.2, 0.01, 13.1), rest);
  expect(lossesSentences(nearer, words)[0]).toContain('5.2 with the site (under 0.1 to 13.1)');
  expect(lossesSentences(nearer, palabras)[0]).toContain('5.2 con el sitio (de menos de 0.1 a 13.1)');
});
