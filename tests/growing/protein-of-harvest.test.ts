import { expect, it } from 'vitest';
import { proteinOfHarvest } from '@/lib/growing/protein-of-harvest';

it('gives 1.8 to 3.3 kg of protein for 100 kg of fresh oyster, and 2.2 to 3.8 kg by the rule of 20 to 35 % of dry weight', () => {
  const answer = proteinOfHarvest(100_000, 'pleurotus_ostreatus');
  if (answer.kind !== 'value') throw new Error('no range');
  const { lowGrams, highGrams, byRule } = answer.value;
  // Mattila et al. 2002 (1.8 g per 100 g fresh) and the USDA SR release (3.31 g; 10.82 g dry matter).
  expect(lowGrams).toBeCloseTo(1_800, 6);
  expect(highGrams).toBeCloseTo(3_310, 6);
  expect(byRule?.lowGrams).toBeCloseTo(2_164, 6);
  expect(byRule?.highGrams).toBeCloseTo(3_787, 6);
});

it('overlaps with the rule of thumb for both species that it is told of', () => {
  for (const species of ['pleurotus_ostreatus', 'agaricus_bisporus']) {
    const answer = proteinOfHarvest(1_000, species);
    if (answer.kind !== 'value' || !answer.value.byRule) throw new Error('no range');
    const { lowGrams, highGrams, byRule } = answer.value;
    expect(byRule.lowGrams).toBeLessThan(highGrams);
    expect(lowGrams).toBeLessThan(byRule.highGrams);
  }
});

it('gives no range for a species without a published composition', () => {
  expect(proteinOfHarvest(1_000, 'stropharia_rugosoannulata')).toMatchObject({
    kind: 'cannot-compute',
    reason: 'outside-table',
  });
});
