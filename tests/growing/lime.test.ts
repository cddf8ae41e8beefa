import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limeDose, limeForBath, limeGramsFromCups } from '@/lib/growing/lime-dose';
import { limeMolarMass, limeSolubility } from '@/lib/growing/lime-solubility';
import { limeWindowDefault } from '@/lib/growing/method-defaults';
import { isCorrosiveLimeWater, questionPh } from '@/lib/growing/question-ph';
import {
  saturatedLimePh,
  saturatedLimePhCurve,
  saturatedLimePhFromCoefficient,
  saturatedLimePhTable,
} from '@/lib/growing/saturated-lime-ph';
import { usGallonsToLitres } from '@/lib/growing/volume-units';
import { expectReason, given } from './expect-value';

describe('pH of saturated lime water (HJ 1147-2020)', () => {
  it.each([
    [22, 12.5662],
    [12, 12.9346],
    [25, 12.46],
    [0, 13.416],
    [50, 11.697],
  ])('at %d C is %d', (celsius, ph) => {
    expect(given(saturatedLimePh(celsius))).toBeCloseTo(ph, 6);
  });

  it.each([
    [5, 13.2112],
    [20, 12.6344],
    [25, 12.4565],
    [30, 12.2863],
  ])('by the fitted curve at %d C is %d', (celsius, ph) => {
    expect(saturatedLimePhCurve(celsius)).toBeCloseTo(ph, 4);
  });

  it('by the coefficient of Bates 1956 at 20 C is 12.615, within 0.02 of the table', () => {
    expect(saturatedLimePhFromCoefficient(20)).toBeCloseTo(12.615, 10);
    expect(Math.abs(saturatedLimePhFromCoefficient(20) - given(saturatedLimePh(20)))).toBeLessThan(0.0221);
  });

  it('curve and table agree within 0.02 at every row', () => {
    for (const { celsius, ph } of saturatedLimePhTable) {
      expect(Math.abs(saturatedLimePhCurve(celsius) - ph)).toBeLessThan(0.02);
    }
  });

  it('falls as the water warms, and is not given outside the table', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 49, noNaN: true }), (celsius) => {
        expect(given(saturatedLimePh(celsius + 1))).toBeLessThan(given(saturatedLimePh(celsius)));
      }),
    );
    for (const celsius of [-0.1, 50.1, Number.NaN]) expectReason(saturatedLimePh(celsius), 'outside-table');
  });
});

describe('lime dose', () => {
  it('5 g/L at 20 C dissolves 1.65, keeps 3.35 in reserve and cannot be above pH 12.64', () => {
    const dose = given(limeDose(250, 50, 20));
    expect(dose.gramsPerLitre).toBe(5);
    expect(dose.dissolvedGramsPerLitre).toBeCloseTo(1.65, 10);
    expect(dose.reserveGramsPerLitre).toBeCloseTo(3.35, 10);
    expect(dose.hasReserve).toBe(true);
    expect(dose.expectedPh).toBeCloseTo(12.637, 10);
  });

  it('1 g/L at 20 C has no reserve and no predicted pH', () => {
    expect(given(limeDose(50, 50, 20))).toMatchObject({
      hasReserve: false,
      reserveGramsPerLitre: 0,
      expectedPh: null,
    });
  });

  it('a 50 L bath at 5 g/L takes 250 g', () => {
    expect(given(limeForBath(50, 5))).toBe(250);
  });

  it('half a cup in 14 to 16 gallons is about 1 g/L: no reserve', () => {
    const grams = given(limeGramsFromCups(0.5));
    expect(grams).toBeCloseTo(59.1, 1);
    for (const gallons of [14, 16]) {
      const dose = given(limeDose(grams, usGallonsToLitres(gallons), 20));
      expect(dose.gramsPerLitre).toBeGreaterThan(0.9);
      expect(dose.gramsPerLitre).toBeLessThan(1.2);
      expect(dose.hasReserve).toBe(false);
    }
  });

  it('interpolates solubility to 1.59 g/L at 25 C, and 0.0203 mol/L is 1.504 g/L', () => {
    expect(given(limeSolubility(25))).toBeCloseTo(1.59, 10);
    expect(0.0203 * limeMolarMass).toBeCloseTo(1.504, 3);
    expect(given(limeSolubility(0))).toBe(1.85);
    expect(given(limeSolubility(70))).toBe(1.06);
    for (const celsius of [-1, 80, Number.NaN]) expectReason(limeSolubility(celsius), 'outside-table');
  });

  it('refuses a bath without water', () => {
    expectReason(limeDose(100, 0, 20), 'out-of-range');
    expectReason(limeDose(-1, 50, 20), 'out-of-range');
  });
});

describe('questions about a pH reading', () => {
  const code = (ph: number, celsius: number | null) =>
    questionPh(ph, celsius, limeWindowDefault)?.code ?? null;

  it('asks above saturation + 0.2 at the temperature of the water', () => {
    expect(code(12.66, 25)).toBeNull();
    expect(code(12.67, 25)).toBe('above-saturation');
    expect(code(13.2, 10)).toBeNull();
    expect(code(13.22, 10)).toBe('above-saturation');
  });

  it('asks above 13.5 without a temperature, below 12 always, and refuses what is no pH', () => {
    expect(code(13.4, null)).toBeNull();
    expect(code(13.6, null)).toBe('very-high');
    expect(code(13.6, 70)).toBe('very-high');
    expect(code(11.9, 20)).toBe('below-window');
    expect(code(14, null)).toBe('very-high');
    expect(code(0, null)).toBe('below-window');
    expect(code(15, 20)).toBe('impossible');
    expect(code(-1, null)).toBe('impossible');
    expect(code(Number.NaN, null)).toBe('impossible');
  });

  it('a saturated bath trips the 12.5 waste rule at 10 and 20 C but not at 25 C', () => {
    expect(isCorrosiveLimeWater(given(saturatedLimePh(25)))).toBe(false);
    expect(isCorrosiveLimeWater(given(saturatedLimePh(20)))).toBe(true);
    expect(isCorrosiveLimeWater(given(saturatedLimePh(10)))).toBe(true);
  });
});
