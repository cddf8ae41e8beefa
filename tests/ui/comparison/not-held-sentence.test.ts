import { createTranslator } from 'next-intl';
import { expect, test, vi } from 'vitest';
import { type ComparedRow, compareOne } from '@/lib/analysis/comparison/compare';
import type { NoIntervalReason } from '@/lib/analysis/shown-figure';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { judgedOn, oysterBags } from '../../analysis/bags-of';
import { contaminationHistory } from '../figure/contaminated-bags';

let language: 'en' | 'es' = 'en';
vi.mock('next-intl/server', () => ({
  getLocale: async () => (language === 'en' ? 'en-US' : 'es-ES'),
  getTranslations: async (namespace: 'comparison.notHeld') =>
    createTranslator({ locale: language, messages: loadMessages(language), namespace }),
}));
const { notHeldSentence } = await import('@/lib/ui/comparison/not-held-sentence');

const empty = compareOne(judgedOn([]), oysterBags, '2026-07-01T00:00:00Z');
const counted = (
  method: string,
  [numerator, denominator]: readonly [number, number],
  behind: Partial<ComparedRow['contamination']['n']>,
  reason: NoIntervalReason = 'too-few-sites',
): ComparedRow => ({
  ...empty,
  method,
  contamination: {
    ...contaminationHistory,
    ...{ kind: 'counts', reason, parts: { numerator, denominator, unit: 'units' } },
    n: { ...contaminationHistory.n, ...behind },
  },
});
const estimated: ComparedRow = {
  ...empty,
  method: 'Lime',
  contamination: {
    ...contaminationHistory,
    ...{ kind: 'figure', value: 15.5, interval: { kind: 'none', reason: 'not-enough-data' } },
  },
};
const said = (rows: readonly ComparedRow[]) =>
  notHeldSentence(rows, { methodName: (method) => method ?? '' });

test('a method that few sites used is named beside the range, with what was counted of it and why it is not in it', async () => {
  language = 'en';
  expect(await said([estimated, counted('Steam', [89, 828], { sites: 2 })])).toBe(
    'Steam, 10.7 in 100 at two sites only (89 of 828 units), is not held against them: too little stands behind it.',
  );
});

test('several methods left out of the range stand in one sentence', async () => {
  language = 'en';
  const rows = [
    counted('Steam', [89, 828], { sites: 2 }),
    counted('Hot-water bath', [1, 20], { runs: 1 }, 'too-few-runs'),
  ];
  expect(await said(rows)).toBe(
    'Steam, 10.7 in 100 at two sites only (89 of 828 units) and hot-water bath, 5.0 in 100 in one treatment only (1 of 20 units), are not held against them: too little stands behind each.',
  );
});

test('a method left out of the range is named in Spanish too', async () => {
  language = 'es';
  expect(await said([counted('Vapor', [89, 828], { sites: 2 })])).toBe(
    'Vapor, 10,7 de cada 100 en solo dos sitios (89 de 828 unidades), no se compara con ellos: hay muy poco detrás.',
  );
});

test('nothing is said where every method has an estimate or nothing was judged of it', async () => {
  expect(await said([estimated, { ...empty, method: 'Steam' }])).toBe('');
});
