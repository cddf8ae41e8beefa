import { createTranslator } from 'next-intl';
import { expect, test } from 'vitest';
import { loadMessages } from '@/lib/ui/messages/load-messages';
import { costSection } from '@/lib/ui/report/document/cost-section';
import type { ReportTongue } from '@/lib/ui/report/document/report-tongue';

const interval = { kind: 'interval', low: 800, high: 1200, level: 0.95, method: 'jackknife' };
const figure = { kind: 'figure', minorPerKg: 1000, batches: 12, groups: 5, interval };
const row = {
  ...{ key: 'all', methodEn: '', methodEs: '', cost: figure, margin: figure, labourMinutesPerKg: 15 },
};
const content = {
  costs: {
    ...{ currency: 'USD', labourMinorPerHour: null, batches: 12, fullBatches: 12, missing: [] },
    ...{ all: row, methods: [] },
  },
  rule: { minSites: 5, topTwoPercent: 85 },
} as unknown as Parameters<typeof costSection>[0];

function costs(massUnit: 'kg' | 'lb', all = row) {
  const given: Partial<Record<keyof ReportTongue, unknown>> = {
    t: createTranslator({ locale: 'en-US', messages: loadMessages('en'), namespace: 'report' }),
    ...{ locale: 'en-US', massUnit, massUcum: massUnit === 'kg' ? 'kg' : '[lb_av]' },
  };
  const told = { ...content, costs: content.costs && { ...content.costs, all } } as typeof content;
  const { tables, notes } = costSection(told, given as ReportTongue);
  const [table] = tables ?? [];
  return { cells: table?.rows[0]?.cells, table, notes };
}

test('a report tells a cost by the kilogram or by the pound as its reader weighs, and files name the unit', () => {
  const kilograms = costs('kg');
  const pounds = costs('lb');
  expect(kilograms.cells?.[1]).toMatchObject({ text: '$10.00 (95\u00a0%: $8.00 to $12.00)', value: 10 });
  expect(pounds.cells?.[1]).toMatchObject({ text: '$4.54 (95\u00a0%: $3.63 to $5.44)' });
  expect(pounds.cells?.[1]?.value).toBeCloseTo(4.5359237, 9);
  expect(kilograms.table?.columns.map(({ unit }) => unit)).toEqual([undefined, 'USD/kg', 'USD/kg', 'min/kg']);
  expect(pounds.table?.columns.map(({ unit }) => unit)).toEqual([
    undefined,
    ...['USD/[lb_av]', 'USD/[lb_av]', 'min/[lb_av]'],
  ]);
  expect(kilograms.cells?.[3]).toEqual({ text: '15', value: 15 });
  expect(pounds.cells?.[3]?.text).toBe('6.8');
  expect(pounds.cells?.[3]?.value).toBeCloseTo(6.80388555, 9);
  expect(JSON.stringify(pounds)).not.toMatch(/kilogram|\bkg\b/);
});

test('less than a minute of work for a kilogram is told with its decimals, and is not rounded in the files', () => {
  const quick = costs('kg', { ...row, labourMinutesPerKg: 0.4537 });
  expect(quick.cells?.[3]).toEqual({ text: '0.45', value: 0.4537 });
});
