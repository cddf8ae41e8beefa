import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { squareFeetToSquareMetres, squareMetresToSquareFeet } from '@/lib/growing/area-units';
import {
  centimetresToMillimetres,
  feetToMillimetres,
  inchesToMillimetres,
  millimetresToInches,
  millimetresToMetres,
} from '@/lib/growing/length-units';
import {
  gramsToKilograms,
  gramsToOunces,
  gramsToPounds,
  kilogramsToGrams,
  ouncesToGrams,
  poundsToGrams,
} from '@/lib/growing/mass-units';
import { celsiusToFahrenheit, fahrenheitToCelsius } from '@/lib/growing/temperature-units';
import { ucumCodes } from '@/lib/growing/ucum-codes';
import {
  litresPerUsCup,
  litresToMillilitres,
  litresToUsGallons,
  millilitresToLitres,
  usGallonsToLitres,
} from '@/lib/growing/volume-units';

const finite = fc.double({ min: 0, max: 1e9, noNaN: true });
const roundTrips: readonly (readonly [string, (value: number) => number, (value: number) => number])[] = [
  ['kilograms', kilogramsToGrams, gramsToKilograms],
  ['pounds', poundsToGrams, gramsToPounds],
  ['ounces', ouncesToGrams, gramsToOunces],
  ['US gallons', usGallonsToLitres, litresToUsGallons],
  ['litres', litresToMillilitres, millilitresToLitres],
  ['inches', inchesToMillimetres, millimetresToInches],
  ['square feet', squareFeetToSquareMetres, squareMetresToSquareFeet],
  ['degrees Fahrenheit', fahrenheitToCelsius, celsiusToFahrenheit],
];

describe('units', () => {
  it('uses the exact definitions', () => {
    expect(poundsToGrams(1)).toBe(453.59237);
    expect(ouncesToGrams(16)).toBe(453.59237);
    expect(poundsToGrams(0.25)).toBeCloseTo(113.4, 1);
    expect(inchesToMillimetres(1)).toBe(25.4);
    expect(feetToMillimetres(1)).toBe(304.8);
    expect(centimetresToMillimetres(12.7)).toBe(127);
    expect(millimetresToMetres(1016)).toBe(1.016);
    expect(squareFeetToSquareMetres(1)).toBe(0.09290304);
    expect(usGallonsToLitres(1)).toBe(3.785411784);
    expect(litresPerUsCup * 1000).toBeCloseTo(236.588, 3);
  });

  it('agrees with the published conversions of pounds per square foot and of 11,000 lb', () => {
    expect(poundsToGrams(1) / 1000 / squareFeetToSquareMetres(1)).toBeCloseTo(4.882, 3);
    expect(gramsToKilograms(poundsToGrams(11_000))).toBeCloseTo(4989.5, 1);
    expect(159_779.32 / 11_000).toBeCloseTo(14.53, 2);
  });

  it('turns 150 and 180 F into the window of 66 to 82 C', () => {
    expect(Math.round(fahrenheitToCelsius(150))).toBe(66);
    expect(Math.round(fahrenheitToCelsius(180))).toBe(82);
    expect(celsiusToFahrenheit(100)).toBe(212);
    expect(fahrenheitToCelsius(-40)).toBe(-40);
  });

  it.each(roundTrips)('%s convert there and back', (_name, there, back) => {
    fc.assert(
      fc.property(finite, (value) => {
        expect(back(there(value))).toBeCloseTo(value, 4);
      }),
    );
  });

  it('gives every unit a code of its own', () => {
    const codes = Object.values(ucumCodes);
    expect(new Set(codes).size).toBe(codes.length);
    expect(ucumCodes).toMatchObject({
      pound: '[lb_av]',
      ounce: '[oz_av]',
      usGallon: '[gal_us]',
      celsius: 'Cel',
    });
  });
});
