import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  biologicalEfficiency,
  pooledBiologicalEfficiency,
  whyNoBe,
} from '@/lib/growing/biological-efficiency';
import { beFromWetYield, impliedDryMatterFraction, yieldPerWetKilogram } from '@/lib/growing/wet-yield';
import { questionBe, questionWeighing } from '@/lib/growing/yield-plausibility';
import { expectReason, given } from './expect-value';

const be = (fresh: number, dry: number) => given(biologicalEfficiency(fresh, dry)).bePercent;

describe('biological efficiency', () => {
  it.each([
    ['ARGAW23 flush 1', 166, 1000, 16.6],
    ['ARGAW23 flush 2', 131.6, 1000, 13.16],
    // The source prints 4.96, cut off instead of rounded.
    ['ARGAW23 flush 3', 49.66, 1000, 4.97],
    ['ARGAW23 three flushes', 166 + 131.6 + 49.66, 1000, 34.73],
    ['Nasir et al., sawdust', 444, 500, 88.8],
    ['Nasir et al., maize residues', 263, 500, 52.6],
    ['Akhtar et al., pomegranate peel and coffee', 260, 500, 52.0],
    ['SIF23, rice straw (prints 39.40, a printing slip)', 399.7, 1000, 39.97],
    ['SIF23, wood flakes and bagasse', 13.54, 1000, 1.35],
  ])('%s: %d g from %d g dry is %d %%', (_source, fresh, dry, expected) => {
    expect(be(fresh, dry)).toBeCloseTo(expected, 2);
  });

  it.each([
    ['CK', 250.0, 90.91],
    ['1', 253.85, 92.31],
    ['2', 240.79, 87.56],
    ['3', 193.79, 70.47],
    ['4', 252.01, 91.64],
    ['5', 244.45, 88.89],
    ['6', 219.42, 79.79],
    ['7', 249.95, 90.89],
    ['8', 241.15, 87.69],
    ['9', 210.27, 76.46],
  ])('HERICIUM25 formula %s: %d g over 275 g dry is %d %%', (_formula, fresh, expected) => {
    expect(be(fresh, 275)).toBeCloseTo(expected, 2);
  });

  it('pools sums, not batch figures: 610 of 1500 g is 40.67 % and not 52.70', () => {
    const batches = [
      { freshGrams: 444, dryGrams: 500 },
      { freshGrams: 166, dryGrams: 1000 },
    ];
    expect(given(pooledBiologicalEfficiency(batches)).bePercent).toBeCloseTo(40.67, 2);
    const mean = batches.reduce((sum, { freshGrams, dryGrams }) => sum + be(freshGrams, dryGrams) / 2, 0);
    expect(mean).toBeCloseTo(52.7, 2);
  });

  it('a total loss is 0, a missing or zero dry mass is unknown', () => {
    expect(be(0, 500)).toBe(0);
    expectReason(biologicalEfficiency(100, 0), 'dry-mass-zero');
    expectReason(biologicalEfficiency(0, 0), 'dry-mass-zero');
    expectReason(biologicalEfficiency(100, null), 'dry-mass-missing');
    expectReason(biologicalEfficiency(null, 500), 'fresh-mass-missing');
    expectReason(biologicalEfficiency(-1, 500), 'out-of-range');
    expectReason(biologicalEfficiency(100, Number.NaN), 'out-of-range');
    expectReason(pooledBiologicalEfficiency([]), 'dry-mass-missing');
    expectReason(
      pooledBiologicalEfficiency([
        { freshGrams: 1, dryGrams: 1 },
        { freshGrams: 1, dryGrams: null },
      ]),
      'dry-mass-missing',
    );
  });

  it('the pooled figure lies between the lowest and highest batch', () => {
    const batch = fc.record({
      freshGrams: fc.integer({ min: 0, max: 100_000 }),
      dryGrams: fc.integer({ min: 1, max: 100_000 }),
    });
    fc.assert(
      fc.property(fc.array(batch, { minLength: 1 }), (batches) => {
        const each = batches.map(({ freshGrams, dryGrams }) => be(freshGrams, dryGrams));
        const pooled = given(pooledBiologicalEfficiency(batches)).bePercent;
        expect(pooled).toBeGreaterThanOrEqual(Math.min(...each) * (1 - 1e-12));
        expect(pooled).toBeLessThanOrEqual(Math.max(...each) * (1 + 1e-12));
      }),
    );
  });

  it('is never given for a bed, and for a log only once its life is over', () => {
    expect(whyNoBe('bed', true)).toBe('beds-have-no-be');
    expect(whyNoBe('log', false)).toBe('log-not-finished');
    expect(whyNoBe('log', true)).toBeNull();
    expect(whyNoBe('bag', false)).toBeNull();
  });
});

describe('yield on the wet substrate', () => {
  it.each([
    ['ATILA16, 80 C', 263.42, 0.29, 90.83],
    ['ATILA16, 60 C', 136.08, 0.29, 46.92],
    ['ATILA16, formaldehyde', 271.28, 0.295, 91.96],
  ])('%s: %d g per wet kg at dry matter %d is BE %d', (_source, perKilogram, fraction, expected) => {
    expect(given(beFromWetYield(perKilogram, fraction))).toBeCloseTo(expected, 2);
  });

  it('implies the dry matter of published pairs', () => {
    expect(given(impliedDryMatterFraction(18.42, 97.58))).toBeCloseTo(0.1888, 4);
    expect(given(impliedDryMatterFraction(24.04, 100.54))).toBeCloseTo(0.2391, 4);
    expectReason(impliedDryMatterFraction(90, 0), 'out-of-range');
    expectReason(impliedDryMatterFraction(90, 50), 'out-of-range');
  });

  it('divides by the filled mass in kilograms', () => {
    expect(given(yieldPerWetKilogram(1200, 5000))).toBe(240);
    expectReason(yieldPerWetKilogram(1200, 0), 'wet-mass-missing');
    expectReason(yieldPerWetKilogram(null, 5000), 'fresh-mass-missing');
    expectReason(beFromWetYield(100, 0), 'out-of-range');
  });
});

describe('plausibility questions', () => {
  const oysterBag = { container: 'bag', isOyster: true, finished: true, recordedAsLost: false } as const;

  it('asks about a finished oyster batch under 5 % or over 200 %', () => {
    expect(questionBe(4.9, oysterBag)?.code).toBe('be-low');
    expect(questionBe(200.1, oysterBag)?.code).toBe('be-high');
    expect(questionBe(5, oysterBag)).toBeNull();
    expect(questionBe(200, oysterBag)).toBeNull();
  });

  it('does not ask about a low figure that is still growing, of another species, or a recorded loss', () => {
    expect(questionBe(1, { ...oysterBag, finished: false })).toBeNull();
    expect(questionBe(1, { ...oysterBag, isOyster: false })).toBeNull();
    expect(questionBe(0, { ...oysterBag, recordedAsLost: true })).toBeNull();
  });

  it('asks about a log over 20 %, not under 5 %', () => {
    expect(questionBe(20.1, { ...oysterBag, container: 'log' })?.code).toBe('log-be-high');
    expect(questionBe(1, { ...oysterBag, container: 'log' })).toBeNull();
  });

  it('asks about 3,000 kg from one bag', () => {
    expect(questionWeighing(3_000_000, 1, 'bag')?.code).toBe('unit-yield-high');
    expect(questionWeighing(1200, 1, 'bag')).toBeNull();
    expect(questionWeighing(20_000, 20, 'bag')).toBeNull();
  });
});
