import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalSignOf, formatMass, massFieldText } from '@/lib/growing/format-quantity';
import { type MassEntryUnit, parseMassEntry } from '@/lib/growing/mass-entry';
import { gramsPerOunce, gramsPerPound } from '@/lib/growing/mass-units';

/** Typed text, default unit, grams. */
const readable: readonly (readonly [string, MassEntryUnit, number])[] = [
  ['1.25', 'kg', 1250],
  ['1,25', 'kg', 1250],
  ['1250', 'g', 1250],
  ['0', 'kg', 0],
  ['0,0', 'kg', 0],
  ['0 kg 0', 'kg', 0],
  ['.5', 'kg', 500],
  [',5', 'kg', 500],
  ['5.', 'kg', 5000],
  ['0,250', 'kg', 250],
  ['0.250', 'kg', 250],
  ['1.25 kg', 'g', 1250],
  ['1,25KG', 'lb', 1250],
  ['1.25kg', 'lb', 1250],
  ['1.25 Kilos', 'g', 1250],
  ['3 kilogramos', 'g', 3000],
  ['250 g', 'kg', 250],
  ['250 gr.', 'kg', 250],
  ['250 gramos', 'kg', 250],
  ['2 lb 3 oz', 'kg', 992],
  ['2lb3oz', 'kg', 992],
  ['2 lb. 3 oz.', 'kg', 992],
  ['2 lb, 3 oz', 'kg', 992],
  ['2 LBS 3 OZ', 'kg', 992],
  ['1 lb 4 oz', 'kg', 567],
  ['1 lb 4.5 oz', 'kg', 581],
  ['1 lb 4,5 oz', 'kg', 581],
  ['2 libras 3 onzas', 'kg', 992],
  ['3', 'lb', 1361],
  ['3 lb', 'kg', 1361],
  ['3#', 'kg', 1361],
  ['8 oz', 'kg', 227],
  ['8', 'oz', 227],
  ['½ lb', 'kg', 227],
  ['1/2 lb', 'kg', 227],
  ['2½ lb', 'kg', 1134],
  ['2 1/2 lb', 'kg', 1134],
  ['1 kg 250 g', 'lb', 1250],
  ['kg 1.25', 'lb', 1250],
  ['1,250 lb 3 oz', 'kg', 567_076],
  ['1 250 g', 'kg', 1250],
  ['1\u00a0250 g', 'kg', 1250],
  ['1\u202f250,5 g', 'kg', 1251],
  ['12 345 g', 'kg', 12345],
  ['1,250.5 g', 'kg', 1251],
  ['1.250,5 g', 'kg', 1251],
  ['1,250,000 g', 'kg', 1_250_000],
  ['1.250.000 g', 'kg', 1_250_000],
  ['1234.567', 'kg', 1_234_567],
  ['1234,567', 'kg', 1_234_567],
  ['0012.50', 'kg', 12_500],
  ['  1.25 \t', 'kg', 1250],
  ['1.25\n', 'kg', 1250],
  ['+0001.250 kg\r\n', 'lb', 1250],
  ['\u00021.25kg\u0003', 'lb', 1250],
  ['1.25\tkg', 'lb', 1250],
  ['+1.25', 'kg', 1250],
  ['١٫٢٥ kg', 'lb', 1250],
  ['١٢٥٠', 'g', 1250],
  ['١٬٢٥٠', 'g', 1250],
  ['۱۲۵۰', 'g', 1250],
  ['१२५०', 'g', 1250],
  ['１．２５ｋｇ', 'lb', 1250],
  ['1.25\u200b kg', 'lb', 1250],
  ['1.25kg,', 'lb', 1250],
];

/** Typed text, default unit, grams of both readings. */
const ambiguous: readonly (readonly [string, MassEntryUnit, readonly number[]])[] = [
  ['1,250', 'kg', [1250, 1_250_000]],
  ['1.250', 'kg', [1250, 1_250_000]],
  ['1,250 g', 'kg', [1.25, 1250]],
  ['12.500 kg', 'kg', [12_500, 12_500_000]],
  ['١,٢٥٠', 'g', [1.25, 1250]],
  ['1,000 lb 0 oz', 'kg', [gramsPerPound, 1000 * gramsPerPound]],
  ['2 lb 3', 'kg', [2 * gramsPerPound + 3 * gramsPerOunce, 2.3 * gramsPerPound]],
];

/** Typed text and why it cannot be read. */
const unreadableEntries: readonly (readonly [string, string])[] = [
  ['', 'empty'],
  [' \t\n', 'empty'],
  ['\u200b', 'empty'],
  ['abc', 'not-a-number'],
  ['kg', 'not-a-number'],
  ['😀', 'not-a-number'],
  ['1.25 😀', 'not-a-number'],
  ['12:30', 'not-a-number'],
  ['12.5.3', 'not-a-number'],
  ['1,2,3', 'not-a-number'],
  ['1,25.5', 'not-a-number'],
  ['1,2500.5', 'not-a-number'],
  ['1/0 kg', 'not-a-number'],
  ['NaN', 'not-a-number'],
  ['Infinity', 'not-a-number'],
  ['__proto__', 'not-a-number'],
  ['-1', 'negative'],
  ['\u22121,5 kg', 'negative'],
  ['2-3 kg', 'more-than-one-number'],
  ['1 25', 'more-than-one-number'],
  ['1\t250', 'more-than-one-number'],
  ['1.25\n1.30', 'more-than-one-number'],
  ['1.25 kg 1.25 kg', 'more-than-one-number'],
  ['2.5 lb 3 oz', 'more-than-one-number'],
  ['3 oz 2 lb', 'more-than-one-number'],
  ['2 lb 20 oz', 'part-too-large'],
  ['1e3', 'unknown-unit'],
  ['0x10', 'unknown-unit'],
  ['5 stone', 'unknown-unit'],
  ['5 constructor', 'unknown-unit'],
  ['0.2 g', 'too-small'],
  ['9999999 kg', 'too-large'],
  ['9'.repeat(70), 'too-long'],
];

describe('mass entry', () => {
  it('has a table of more than sixty texts', () => {
    expect(readable.length + ambiguous.length + unreadableEntries.length).toBeGreaterThanOrEqual(60);
  });

  it.each(readable)('reads %j (default %s) as %d g', (text, unit, grams) => {
    expect(parseMassEntry(text, unit)).toMatchObject({ kind: 'mass', grams });
  });

  it.each(ambiguous)('asks about %j (default %s)', (text, unit, grams) => {
    const entry = parseMassEntry(text, unit);
    expect(entry.kind).toBe('ambiguous');
    if (entry.kind !== 'ambiguous') return;
    expect(entry.readings).toHaveLength(grams.length);
    entry.readings.forEach((reading, index) => {
      expect(reading).toBeCloseTo(grams[index] ?? Number.NaN, 9);
    });
  });

  it.each(unreadableEntries)('does not read %j (%s)', (text, why) => {
    expect(parseMassEntry(text, 'kg')).toEqual({ kind: 'unreadable', why });
  });

  it('refuses a megabyte at once', () => {
    expect(parseMassEntry('1'.repeat(1_000_000), 'kg')).toEqual({ kind: 'unreadable', why: 'too-long' });
  });

  it('says which unit it took and whether that was typed', () => {
    expect(parseMassEntry('2 lb 3 oz', 'kg')).toEqual({
      kind: 'mass',
      grams: 992,
      understood: [
        { amount: 2, unit: 'lb' },
        { amount: 3, unit: 'oz' },
      ],
      unitTyped: true,
    });
    expect(parseMassEntry('2', 'lb')).toMatchObject({
      unitTyped: false,
      understood: [{ amount: 2, unit: 'lb' }],
    });
  });

  it("lets the reader's own decimal sign settle three decimals, and only that sign", () => {
    expect(parseMassEntry('1.250 kg', 'kg', '.')).toMatchObject({ kind: 'mass', grams: 1250 });
    expect(parseMassEntry('1,250 kg', 'kg', ',')).toMatchObject({ kind: 'mass', grams: 1250 });
    expect(parseMassEntry('1,250 kg', 'kg', '.').kind).toBe('ambiguous');
    expect(parseMassEntry('1.250 kg', 'kg', ',').kind).toBe('ambiguous');
  });

  const regions = fc.constantFrom('en-US', 'es-US', 'es-ES', 'es-MX', 'de-DE', 'fr-FR', 'en-IN');
  const anyGrams = fc.oneof(
    fc.nat(99_999_999),
    fc.nat(99_999).map((kilograms) => kilograms * 1000),
  );

  it('reads back what it puts into a field, to the gram, in every region', () => {
    fc.assert(
      fc.property(anyGrams, regions, fc.constantFrom('kg', 'lb'), (grams, region, unit) => {
        const text = massFieldText(grams, unit, region);
        expect(parseMassEntry(text, unit, decimalSignOf(region))).toMatchObject({ kind: 'mass', grams });
      }),
      { numRuns: 500 },
    );
  });

  it('puts pounds back as they were weighed, with no more decimals than the gram needs', () => {
    expect(massFieldText(1361, 'lb', 'en-US')).toBe('3');
    expect(massFieldText(1361, 'lb', 'es-ES')).toBe('3');
    expect(massFieldText(992, 'lb', 'es-ES')).toBe('2,187');
    expect(massFieldText(1250, 'kg', 'es-ES')).toBe('1,25');
  });

  it('never misreads what it wrote: the right mass, or a question with the right mass in it', () => {
    fc.assert(
      fc.property(anyGrams, regions, fc.boolean(), (grams, region, own) => {
        const entry = parseMassEntry(
          formatMass(grams, 'kg', region),
          'lb',
          own ? decimalSignOf(region) : null,
        );
        if (entry.kind === 'ambiguous') {
          expect(entry.readings.some((reading) => Math.round(reading) === grams)).toBe(true);
        } else {
          expect(entry).toMatchObject({ kind: 'mass', grams });
        }
      }),
      { numRuns: 500 },
    );
  });

  it('reads pounds and ounces back within half an ounce', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50_000_000 }), (grams) => {
        const entry = parseMassEntry(formatMass(grams, 'lb', 'en-US'), 'kg', '.');
        const read = entry.kind === 'mass' ? [entry.grams] : entry.kind === 'ambiguous' ? entry.readings : [];
        expect(read.some((reading) => Math.abs(reading - grams) <= 15)).toBe(true);
      }),
    );
  });

  it('answers any text whatever, in time, and never with a number that is no mass', () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.string({ unit: fc.constantFrom(...'0123456789.,- /lbozkg\n') }),
    );
    fc.assert(
      fc.property(text, (typed) => {
        const entry = parseMassEntry(typed, 'kg');
        if (entry.kind === 'mass') expect(Number.isSafeInteger(entry.grams) && entry.grams >= 0).toBe(true);
        if (entry.kind === 'ambiguous') expect(new Set(entry.readings).size).toBeGreaterThan(1);
      }),
      { numRuns: 2000 },
    );
  });
});
