import { describe, expect, it } from 'vitest';
import { dryMassFromComponents, dryMassFromFilled, type KnownMoisture } from '@/lib/growing/batch-dry-mass';
import { resolveMoisture } from '@/lib/growing/resolve-moisture';
import { expectReason, given } from './expect-value';

const measured = (percent: number): KnownMoisture => ({ percent, source: 'measured' });
const none: KnownMoisture = { percent: null, source: 'none' };

describe('dry mass of a batch', () => {
  it('uses the moisture at filling with the filled mass: 29.33 kg at 70 % is 8.80 kg, not the 25.8 of 12 %', () => {
    expect(given(dryMassFromFilled(29_333, measured(70)))).toEqual({
      dryGrams: 8800,
      drySupplementGrams: 0,
      origin: 'filled_mass',
      assumed: false,
    });
    expect(given(dryMassFromFilled(29_333, measured(12))).dryGrams).toBe(25_813);
  });

  it('uses the as-received moisture with the mass before treatment', () => {
    const straw = { role: 'substrate', grams: 10_000, asReceived: measured(12) } as const;
    expect(given(dryMassFromComponents([straw]))).toMatchObject({
      dryGrams: 8800,
      origin: 'mass_before_treatment',
    });
  });

  it('counts supplement in and gypsum or lime out', () => {
    const dryMass = given(
      dryMassFromComponents([
        { role: 'substrate', grams: 10_000, asReceived: measured(12) },
        { role: 'supplement', grams: 1000, asReceived: { percent: 12, source: 'assumed' } },
        { role: 'additive', grams: 1000, asReceived: none },
      ]),
    );
    expect(dryMass).toEqual({
      dryGrams: 9680,
      drySupplementGrams: 880,
      origin: 'mass_before_treatment',
      assumed: true,
    });
  });

  it('is unknown, never smaller, when one part is missing', () => {
    const straw = { role: 'substrate', grams: 10_000, asReceived: measured(12) } as const;
    expectReason(
      dryMassFromComponents([straw, { role: 'supplement', grams: 500, asReceived: none }]),
      'moisture-missing',
    );
    expectReason(
      dryMassFromComponents([straw, { role: 'substrate', grams: null, asReceived: measured(12) }]),
      'mass-before-treatment-missing',
    );
    expectReason(dryMassFromComponents([]), 'no-components');
    expectReason(dryMassFromComponents([{ role: 'additive', grams: 5, asReceived: none }]), 'no-components');
    expectReason(dryMassFromFilled(null, measured(70)), 'wet-mass-missing');
    expectReason(dryMassFromFilled(5000, none), 'moisture-missing');
    expectReason(dryMassFromFilled(5000, measured(100)), 'out-of-range');
    expectReason(dryMassFromFilled(-5, measured(70)), 'out-of-range');
  });

  it('marks a default moisture as assumed and prefers a measured one', () => {
    expect(resolveMoisture(68, 70)).toEqual({ percent: 68, source: 'measured' });
    expect(resolveMoisture(null, 70)).toEqual({ percent: 70, source: 'assumed' });
    expect(resolveMoisture(null, null)).toEqual({ percent: null, source: 'none' });
    expect(given(dryMassFromFilled(5000, resolveMoisture(null, 70)))).toMatchObject({
      dryGrams: 1500,
      assumed: true,
    });
  });
});
