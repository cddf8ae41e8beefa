import { expect, test } from 'vitest';
import type { LossesAnswer, LossSource, SourceShare } from '@/lib/analysis/loss-question/losses-answer';
import { lossesSentences, sourcesToActOn, yieldSentence } from '@/lib/ui/insight/losses-sentences';
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
  ...{ examples: [], noneOut: [] },
  chanceRatio: null,
  typicalUnits: 12,
});

const rest = share('rest', 60, 50, 70);

test('a share has the one decimal of the table, and one that matters no limit of zero', () => {
  const near = answer(share('site', 5.2, 0.4, 13.1), share('run', 20, 9, 31), rest);
  expect(lossesSentences(near, words)[0]).toContain(
    '20.0 with the treatment run (9.0 to 31.0) and 5.2 with the site (0.4 to 13.1)',
  );
  expect(yieldSentence(near.yield, palabras)).toContain('5.2 con el sitio (de 0.4 a 13.1)');
  const nearer = answer(share('site', 5.2, 0.01, 13.1), rest);
  expect(lossesSentences(nearer, words)[0]).toContain('5.2 with the site (under 0.1 to 13.1)');
  expect(lossesSentences(nearer, palabras)[0]).toContain('5.2 con el sitio (de menos de 0.1 a 13.1)');
});

test('a source whose share ends below 5 in 100 matters little, and nothing is asked for to tell', () => {
  const small = share('material lot', 0, 0, 3.3);
  const some = answer(share('site', 20, 9, 31), small, share('run', 4, 0, 22), rest);
  const said = lossesSentences(some, words);
  expect(said[1]).toBe('This matters little: the material lot (at most 3.3 of 100 parts).');
  expect(said[2]).toBe(
    'It cannot be told yet whether the treatment run matters. What would tell: runs that fill two batches or more.',
  );
  expect(lossesSentences(some, palabras)[1]).toBe(
    'Importa poco: el lote de material (a lo sumo 3.3 de 100 partes).',
  );
  const open = share('material lot', 0.6, 0, 5.1);
  expect(lossesSentences(answer(open, rest), words)[1]).toMatch(
    /^It cannot be told yet whether the material lot/,
  );
});

test('where no source can be told, those that matter little are not said to be open, nor begun with', () => {
  const small = share('material lot', 0, 0, 3.3);
  const [open] = lossesSentences(answer(small, share('run', 4, 0, 22), rest), words);
  expect(open).toBe('It cannot be told yet where losses come from: no source can be told to matter.');
  expect(lossesSentences(answer(small, rest), palabras)[0]).toMatch(
    /^Ninguna fuente registrada importa mucho/,
  );
  expect(sourcesToActOn(answer(small, share('run', 4, 0, 22), rest))).toEqual(['rest']);
  expect(sourcesToActOn(answer(small, share('run', 4, 0, 22)))).toEqual(['run']);
});
