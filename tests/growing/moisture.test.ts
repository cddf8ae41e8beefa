import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryGramsFromWet, wetGramsFromDry } from '@/lib/growing/dry-mass';
import { mixMoisture } from '@/lib/growing/mix-moisture';
import {
  dryBasisPercent,
  dryMatterFraction,
  dryToWetBasis,
  wetBasisPercent,
  wetToDryBasis,
} from '@/lib/growing/moisture-basis';
import { moistureFromDrying } from '@/lib/growing/moisture-from-drying';
import { waterToAdd } from '@/lib/growing/water-to-add';
import { expectReason, given } from './expect-value';

const wet = (percent: number) => given(wetBasisPercent(percent));
const dry = (percent: number) => given(dryBasisPercent(percent));
const anyWet = fc.double({ min: 0, max: 99, noNaN: true }).map(wet);

describe('moisture on wet and dry basis', () => {
  it('follows the definitions (Biomass Energy Foundation 2010): 100 g drying to 30 g', () => {
    const moisture = given(moistureFromDrying(100, 30));
    expect(moisture.wetPercent).toBeCloseTo(70.0, 10);
    expect(moisture.dryPercent).toBeCloseTo(233.33, 2);
  });

  it.each([
    [12, 13.64],
    [15, 17.65],
    [55, 122.22],
    [60, 150.0],
    [65, 185.71],
    [70, 233.33],
    [75, 300.0],
    [80, 400.0],
  ])('%d %% wet basis is %d %% dry basis', (percent, expected) => {
    expect(wetToDryBasis(wet(percent))).toBeCloseTo(expected, 2);
  });

  it.each([
    ['white oak, green (FIA)', 68.26667, 40.57],
    ['quaking aspen, green (FIA)', 128.94286, 56.32],
    ['a summer-cut tree (BEF)', 100, 50.0],
  ])('%s: %d %% dry basis is %d %% wet basis', (_name, percent, expected) => {
    expect(dryToWetBasis(dry(percent))).toBeCloseTo(expected, 2);
  });

  it('converts there and back', () => {
    fc.assert(
      fc.property(anyWet, (moisture) => {
        expect(dryToWetBasis(wetToDryBasis(moisture))).toBeCloseTo(moisture, 8);
        expect(dryMatterFraction(moisture)).toBeCloseTo(1 / (1 + wetToDryBasis(moisture) / 100), 10);
      }),
    );
  });

  it('refuses what cannot be a moisture', () => {
    for (const percent of [-0.1, 100, 120, Number.NaN])
      expectReason(wetBasisPercent(percent), 'out-of-range');
    for (const percent of [-1, Number.POSITIVE_INFINITY, Number.NaN]) {
      expectReason(dryBasisPercent(percent), 'out-of-range');
    }
    expect(dryBasisPercent(250).kind).toBe('value');
    expectReason(moistureFromDrying(100, 0), 'out-of-range');
    expectReason(moistureFromDrying(100, 101), 'out-of-range');
    expectReason(moistureFromDrying(0, 0), 'out-of-range');
  });
});

describe('dry mass and water', () => {
  it('takes 10 kg straw at 12 % to 70 %', () => {
    const straw = given(waterToAdd(10_000, wet(12), wet(70)));
    expect(straw.dryGrams).toBeCloseTo(8800, 6);
    expect(straw.finalGrams).toBeCloseTo(29_333.33, 2);
    expect(straw.waterGrams).toBeCloseTo(19_333.33, 2);
  });

  it.each([
    [70, 1500, 80.0],
    [60, 2000, 60.0],
    [75, 1250, 96.0],
  ])('a 5 kg bag at %d %% holds %d g dry, so 1.2 kg is BE %d', (percent, dryGrams, be) => {
    const held = given(dryGramsFromWet(5000, wet(percent)));
    expect(held).toBeCloseTo(dryGrams, 8);
    expect((100 * 1200) / held).toBeCloseTo(be, 8);
  });

  it('dry and wet mass are inverse', () => {
    fc.assert(
      fc.property(anyWet, fc.integer({ min: 0, max: 1_000_000 }), (moisture, grams) => {
        expect(given(wetGramsFromDry(given(dryGramsFromWet(grams, moisture)), moisture))).toBeCloseTo(
          grams,
          4,
        );
      }),
    );
  });

  it('says by how much a material is already too wet', () => {
    const result = waterToAdd(10_000, wet(80), wet(70));
    expectReason(result, 'already-wetter');
    if (result.kind === 'cannot-compute') expect(result.values.excessGrams).toBeCloseTo(3333.33, 2);
    expect(given(waterToAdd(10_000, wet(70), wet(70))).waterGrams).toBeCloseTo(0, 8);
  });

  it('refuses a negative mass', () => {
    expectReason(dryGramsFromWet(-1, wet(70)), 'out-of-range');
    expectReason(waterToAdd(Number.NaN, wet(12), wet(70)), 'out-of-range');
  });

  it("mixes by mass: the mix's moisture is not the mean of the moistures", () => {
    const mix = given(
      mixMoisture([
        { wetGrams: 9000, moisture: wet(10) },
        { wetGrams: 1000, moisture: wet(60) },
      ]),
    );
    expect(mix.dryGrams).toBeCloseTo(8500, 8);
    expect(mix.moistureWetPercent).toBeCloseTo(15, 8);
    expectReason(mixMoisture([]), 'no-components');
  });
});
