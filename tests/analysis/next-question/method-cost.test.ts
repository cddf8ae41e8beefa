import { expect, test } from 'vitest';
import { type CostedDryBatch, methodCosts } from '@/lib/analysis/next-question/method-cost';

const batch = (siteId: string, rest: Partial<CostedDryBatch> = {}): CostedDryBatch => ({
  siteId,
  method: 'bath',
  dryGrams: 5000,
  labourMinutes: 30,
  fuelMinor: null,
  waterMinor: null,
  waterLitres: null,
  fullMinor: null,
  ...rest,
});

const costAtMill = (batches: readonly CostedDryBatch[]) => methodCosts(batches, 'USD')('bath', 'mill');

test('what a site wrote down is reckoned for 10 kg of dry material, by part', () => {
  const cost = costAtMill([
    batch('mill'),
    batch('mill', { dryGrams: 15_000, labourMinutes: 50, fuelMinor: 300 }),
  ]);
  expect(cost).toMatchObject({
    of: 'site',
    labourMinutes: { amount: 40, batches: 2 },
    fuelMinor: { amount: 200, batches: 1 },
    waterMinor: null,
    fullMinor: null,
  });
});

test('amounts of other sites are shown only where three of them or more lie behind them', () => {
  const two = [batch('elder'), batch('tarn')];
  expect(costAtMill(two)).toMatchObject({ of: 'nobody', labourMinutes: null });
  const three = [...two, batch('gorse', { labourMinutes: 90 })];
  expect(costAtMill(three)).toMatchObject({
    of: 'network',
    labourMinutes: { amount: 100, batches: 3 },
  });
});

test('a batch that wrote nothing down neither counts nor makes a site one of three', () => {
  const silent = batch('gorse', { labourMinutes: null });
  expect(costAtMill([batch('elder'), batch('tarn'), silent]).of).toBe('nobody');
});

test('of each part three sites must have told: one that alone wrote down its fuel is not read out', () => {
  const others = [batch('elder'), batch('tarn'), batch('gorse', { fuelMinor: 771, fullMinor: 6172 })];
  expect(costAtMill(others)).toMatchObject({
    ...{ of: 'network', labourMinutes: { amount: 60 }, fuelMinor: null, fullMinor: null },
  });
});
