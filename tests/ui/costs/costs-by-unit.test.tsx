import { createTranslator } from 'next-intl';
import { renderToStaticMarkup } from 'react-dom/server';
import { beforeEach, expect, test, vi } from 'vitest';
import { type CostedBatch, costGroup, missingParts } from '@/lib/analysis/costs/cost-group';
import type { CostsAnswer } from '@/lib/analysis/costs/read-costs';
import type { Language, MassUnit } from '@/lib/database/generated/enums';
import { loadMessages } from '@/lib/ui/messages/load-messages';

let language: Language = 'en';
vi.mock('next-intl/server', () => ({
  getLocale: async () => `${language}-US`,
  getTranslations: async (namespace: 'insight.costs') =>
    createTranslator({ locale: `${language}-US`, messages: loadMessages(language), namespace }),
}));
const { CostsAnswerView } = await import('@/lib/ui/costs/costs-answer');
const { costsWords } = await import('@/lib/ui/costs/costs-words');

/** 4 batches of one method: 40.00 and 60 minutes for 4 kg each, so 10.00 and 15 minutes for a kilogram. */
const batches: CostedBatch[] = ['a', 'b', 'c', 'd'].map((siteId) => ({
  ...{ id: siteId, siteId, method: 'soak', run: siteId, freshGrams: 4000, soldMinorPerKg: 1600 },
  cost: { kind: 'full', minor: 4000, labourMinutes: 60 },
}));
const group = costGroup('soak', batches, 'site');
const answer: CostsAnswer = {
  ...{ period: { from: '2026-01-01', to: '2026-12-31' }, currency: 'USD', labourMinorPerHour: null },
  ...{ batches: 4, fullBatches: 4, missing: missingParts(batches), methods: [group], sites: [], all: group },
  methodNames: new Map([['soak', { en: 'Cold soak', es: 'Remojo en frío' }]]),
  siteNames: new Map(),
};

async function told(massUnit: MassUnit, methods = answer.methods): Promise<string> {
  const words = await costsWords(answer, { language, massUnit });
  return renderToStaticMarkup(<CostsAnswerView answer={{ ...answer, methods }} words={words} />);
}

beforeEach(() => {
  language = 'en';
});

test('a reader who weighs in kilograms reads money, work and mass by the kilogram', async () => {
  const page = await told('kg');
  expect(page).toContain('A kilogram cost $10.00 by cold soak.');
  for (const text of ['Cost of a kg', 'Margin of a kg', '>6.00 ', '>15<', '>16.0<'])
    expect(page).toContain(text);
});

test('a reader who weighs in pounds reads the same by the pound, and no kilogram anywhere', async () => {
  const page = await told('lb');
  expect(page).toContain('A pound cost $4.54 by cold soak.');
  for (const text of ['Cost of a lb', 'Margin of a lb', '>2.72 ', '>6.8<', '>35.3<'])
    expect(page).toContain(text);
  expect(page).not.toMatch(/kilogram|\bkg\b/i);
});

test('in Spanish a pound is feminine', async () => {
  language = 'es';
  const page = await told('lb');
  expect(page).toContain('Una libra costó $4.54 con remojo en frío.');
  expect(page).not.toMatch(/kilogramo|\bkg\b|un libra/i);
});

test('less than a minute of work for a kilogram is told with its decimals', async () => {
  const page = await told('kg', [{ ...group, labourMinutesPerKg: 0.4537 }]);
  expect(page).toContain('>0.45<');
});

test('a method with too few full batches for limits is named apart, not held against the others', async () => {
  const one = costGroup('bath', batches.slice(0, 1), 'site');
  const names = new Map([
    ...answer.methodNames,
    ['bath', { en: 'Hot-water bath', es: 'Baño de agua caliente' }],
  ]);
  const words = await costsWords({ ...answer, methodNames: names }, { language, massUnit: 'kg' });
  const page = renderToStaticMarkup(
    <CostsAnswerView answer={{ ...answer, batches: 5, methods: [group, one] }} words={words} />,
  );
  expect(page).toContain('A kilogram cost $10.00 by cold soak. That rests on the 4 batches');
  expect(page).toContain('to say what a method costs: hot-water bath (1 batch).');
});
