import { expect, test } from 'vitest';
import type { MethodPair } from '@/lib/analysis/method-question/methods-answer';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import { pairSentence, yieldSentences } from '@/lib/ui/insight/pair-sentences';
import { contaminationHistory } from '../figure/contaminated-bags';
import { sentenceWords } from './sentence-words';

const words = sentenceWords('en');
const palabras = sentenceWords('es');

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
  yieldWould: {
    kind: 'batches',
    lacks: [{ method: 'lime', batches: 1 }],
    siteIds: ['Mill Lane'],
    points: 10,
  },
  croppedPercent: null,
  croppedTells: false,
  ...changes,
});

test('limits have the one decimal that the table has', () => {
  expect(pairSentence(pair({}), words)).toContain('between −4.0 and 6.0 bags in 100');
  expect(pairSentence(pair({ points: between(-0.7, 10.8) }), words)).toContain('between −0.7 and 10.8 bags');
});

test('an interval that leaves out nothing, and still does not tell, says why', () => {
  const alone = pair({ points: between(2, 9), yieldPoints: between(-13, -3) });
  expect(pairSentence(alone, words)).toMatch(/looked at alone .* may come up by chance/);
  expect(pairSentence(alone, palabras)).toMatch(/por sí sola.* puede salir por azar/);
  const [of] = yieldSentences(alone, words);
  expect(of).toMatch(
    /looked at alone, bath gives 3.0 to 13.0 points .* more than lime .* may come up by chance/,
  );
  expect(yieldSentences(alone, palabras)[0]).toContain('puede salir por azar');
});

test('a limit that leaves out nothing is not written as nothing', () => {
  const near = pair({ points: between(0.03, 9), yieldPoints: between(-18.7, -0.02) });
  expect(pairSentence(near, words)).toContain('between under 0.1 and 9.0 bags');
  expect(yieldSentences(near, palabras)[0]).toContain('de menos de 0.1 a 18.7 puntos');
});

test('what would help to tell is said of the yield, too', () => {
  expect(yieldSentences(pair({}), words)).toEqual([
    'In yield the two cannot be told apart yet (−9.0 to 3.0 points of biological efficiency, total losses counting as 0). About 1 more batch of lime, at sites that use both (such as Mill Lane), would help to tell a difference of 10 points.',
  ]);
});

test('what both methods lack is named of both, at sites that use both', () => {
  const lacks = [
    { method: 'lime', batches: 57 },
    { method: 'bath', batches: 1 },
  ];
  const would = { kind: 'batches', lacks, siteIds: ['Mill Lane', 'Court'], points: 5 } as const;
  expect(pairSentence(pair({ would }), words)).toMatch(
    /\. About 57 more batches of lime and 1 more batch of bath, at sites that use both \(such as Mill Lane and Court\), would help to tell a difference of 5 in 100\.$/,
  );
  expect(pairSentence(pair({ would }), palabras)).toMatch(
    /\. Con alrededor de 57 lotes más con lime y 1 lote más con bath, en sitios que usan ambos \(por ejemplo Mill Lane y Court\), sería más fácil distinguir una diferencia de 5 de cada 100\.$/,
  );
});

test('batches are said to be enough only where that was reckoned', () => {
  const would = { kind: 'sites', method: 'lime', siteId: 'Court', points: 5 } as const;
  const said = (of: MethodPair['would'], language = words) => pairSentence(pair({ would: of }), language);
  expect(said({ ...would, enough: true })).toContain('batches enough to tell a difference of 5 in 100');
  expect(said({ ...would, enough: false })).toMatch(/\. Too few sites use both: Court could try lime/);
  expect(said({ kind: 'unreckoned' })).toMatch(/\. How many batches would tell cannot be reckoned yet/);
  expect(said({ kind: 'unreckoned' }, palabras)).toMatch(/\. Aún no se puede calcular/);
});

test('a crop is said to differ only where it does among all pairs', () => {
  const said = (low: number, high: number, croppedTells: boolean, language = words) =>
    yieldSentences(pair({ croppedPercent: { estimate: -8, low, high }, croppedTells }), language)[1];
  expect(said(-18, 4, false)).toContain('which may be chance');
  expect(said(-18, -4, false)).toMatch(/looked at alone \(−18.0 to −4.0\s%\), but .* may come up by chance/);
  expect(said(-18, -4, false, palabras)).toMatch(
    /por sí solos \(−18.0 a −4.0\s%\), pero .* puede salir por azar/,
  );
  expect(said(-18, -4, true)).toMatch(/gave 8.0\s% less than bath \(−18.0 to −4.0\s%\)\.$/);
});
