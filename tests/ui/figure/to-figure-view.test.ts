import { createTranslator } from 'next-intl';
import { describe, expect, test } from 'vitest';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import { toChartRow } from '@/lib/ui/chart/to-chart-row';
import type { FigureWords } from '@/lib/ui/figure/figure-words';
import { toFigureView } from '@/lib/ui/figure/to-figure-view';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { contaminatedBags, contaminationHistory } from './contaminated-bags';

const messages = loadMessages('en');
const words: FigureWords = {
  t: createTranslator({ locale: 'en-US', messages, namespace: 'figures' }),
  common: createTranslator({ locale: 'en-US', messages, namespace: 'common.figure' }),
  locale: 'en-US',
  timeZone: 'America/New_York',
  massUnit: 'kg',
};
const view = (figure: ShownFigure) => toFigureView(figure, words);
const counts: ShownFigure = { ...contaminationHistory, kind: 'counts', reason: 'too-few-runs' };
const cannot: ShownFigure = { ...contaminationHistory, kind: 'cannot', reason: 'all-left-out' };

describe('a figure in words', () => {
  test('gives estimate, unit and interval in the reader’s writing', () => {
    expect(view(contaminatedBags)).toMatchObject({
      estimate: '12.5',
      unit: '%',
      interval: '8.1–18.3',
      reason: '',
    });
  });

  test('says how much lies behind it, what marks it and what was left out', () => {
    const { size, marks, history } = view(contaminatedBags);
    expect(size).toEqual(['12 batches', '240 units', '6 runs', '1 site']);
    expect(marks).toEqual(['Few batches']);
    expect(history.parts).toBe('30 of 240');
    expect(history.leftOut).toEqual(['2 batches (40 units): not inspected at the end of the window']);
    expect(history.asOf.replace(/[\u00a0\u202f]/g, ' ')).toBe('4 Jul 2026, 9:30 PM');
  });

  test('that rests on others alone whose number is not told never says "0 batches"', () => {
    const n = { batches: 0, units: 0, runs: 0, sites: 0 };
    const untold = view({ ...contaminatedBags, n, marks: ['others-untold'], leftOut: [] });
    expect(untold.size).toEqual(['batches of one or two other sites']);
    expect(untold.marks.join()).toMatch(/one or two other sites/);
    // Nor that nothing was left out, which nobody here knows of the others.
    expect(untold.history.leftOut).toEqual([
      'Of the one or two other sites it is not told what was left out',
    ]);
  });

  test('on too few runs is counts with the reason and no interval', () => {
    expect(view(counts)).toMatchObject({ estimate: '30 of 240', unit: '', interval: '' });
    expect(view(counts).reason).toBe('too few runs for an interval');
  });

  test('that cannot be computed says so and why, and is never a number', () => {
    expect(view(cannot)).toMatchObject({
      estimate: 'Cannot compute',
      reason: 'Every batch had to be left out',
    });
    expect(view(cannot).history.parts).toBe('');
  });

  test('that is a plain sum needs no interval and no excuse for it', () => {
    const sum: ShownFigure = {
      ...contaminationHistory,
      unit: 'kilograms',
      method: { code: 'sum', source: '', clusteredBy: 'nothing' },
      kind: 'figure',
      value: 1234.56,
      interval: { kind: 'none', reason: 'complete-count' },
    };
    expect(view(sum)).toMatchObject({ estimate: '1,234.6', unit: 'kg', interval: '', reason: '' });
  });
});

describe('a figure for who weighs in pounds', () => {
  const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
  const inPounds = (figure: ShownFigure) => toFigureView(figure, { ...words, massUnit: 'lb' });
  const bedYield: Extract<ShownFigure, { kind: 'figure' }> = {
    ...contaminationHistory,
    kind: 'figure',
    unit: 'kilograms-per-square-metre',
    value: 5,
    interval: { kind: 'interval', low: 4, high: 6, level: 0.95, method: 'x' },
    parts: { numerator: 50_000, denominator: 100_000, unit: 'grams-and-square-centimetres' },
  };

  test('is in pounds per square foot for beds: 5 kg/m² is 1.02 lb/ft²', () => {
    const seen = inPounds(bedYield);
    expect(seen).toMatchObject({ estimate: '1.02', unit: 'lb per ft²', interval: '0.82–1.23' });
    expect(plain(seen.history.parts)).toBe('110.2 lb of 107.6 ft²');
    expect(view(bedYield)).toMatchObject({ estimate: '5.00', unit: 'kg per m²', interval: '4.00–6.00' });
  });

  test('is in ounces per log and year for logs: 245 g is 8.6 oz', () => {
    const logs: ShownFigure = { ...bedYield, unit: 'grams-per-log-year', value: 245 };
    expect(inPounds(logs)).toMatchObject({ estimate: '8.6', unit: 'oz per log and year' });
  });

  test('is the same percentage, and is drawn where it is written', () => {
    expect(inPounds(contaminatedBags).estimate).toBe('12.5');
    const row = toChartRow({ key: 'beds', label: 'Beds' }, inPounds(bedYield));
    expect(row.estimate).toBeCloseTo(1.024, 3);
    expect(row.high).toBeCloseTo(1.229, 3);
  });
});

describe('a chart’s row', () => {
  const place = { key: 'fernhill', label: 'Fernhill' };

  test('says what the table’s cell says and draws the same limits', () => {
    const row = toChartRow(place, view(contaminatedBags));
    expect(row).toMatchObject({
      text: '12.5 (8.1–18.3)',
      size: '12 batches',
      estimate: 12.5,
      low: 8.06,
      high: 18.34,
    });
  });

  test('has no mark where only the counts are known', () => {
    expect(toChartRow(place, view(counts))).not.toHaveProperty('estimate');
    expect(toChartRow(place, view(cannot))).not.toHaveProperty('estimate');
  });
});
