import { describe, expect, it } from 'vitest';
import {
  driedGrams,
  freshComposition,
  proteinFromNitrogen,
  proteinPercentOfDryMatter,
  proteinRangeGrams,
} from '@/lib/growing/mushroom-composition';
import { expectReason, given } from './expect-value';

describe('composition of fresh mushrooms', () => {
  it('100 kg of oyster hold 1.8 to 3.3 kg protein (Mattila et al. 2002; USDA SR)', () => {
    const range = given(proteinRangeGrams(100_000, 'pleurotus_ostreatus'));
    expect(range.lowGrams).toBeCloseTo(1800, 6);
    expect(range.highGrams).toBeCloseTo(3310, 6);
  });

  it('never gives a range that is upside down', () => {
    for (const code of Object.keys(freshComposition)) {
      const range = given(proteinRangeGrams(1000, code));
      expect(range.lowGrams).toBeLessThan(range.highGrams);
    }
  });

  it.each([
    ['pleurotus_ostreatus', 30.6],
    ['lentinula_edodes', 21.8],
    ['agaricus_bisporus', 40.9],
    ['grifola_frondosa', 20.1],
  ])('%s has %d %% protein in the dry matter (USDA SR)', (code, expected) => {
    const composition = freshComposition[code];
    expect(composition && proteinPercentOfDryMatter(composition)).toBeCloseTo(expected, 1);
  });

  it.each([
    [4.38, 18.1],
    [4.7, 19.4],
    [6.25, 25.8],
  ])('nitrogen 4.13 %% with factor %d is %d %%', (factor, expected) => {
    expect(proteinFromNitrogen(4.13, factor)).toBeCloseTo(expected, 1);
  });

  it('10 kg fresh oyster dry to 1.08 kg at 10.82 % and 0.77 kg at 7.7 %', () => {
    expect(driedGrams(10_000, 10.82)).toBeCloseTo(1082, 6);
    expect(driedGrams(10_000, 7.7)).toBeCloseTo(770, 6);
  });

  it('gives no protein for a species that is not in the table', () => {
    expectReason(proteinRangeGrams(1000, 'stropharia_rugosoannulata'), 'outside-table');
  });
});
