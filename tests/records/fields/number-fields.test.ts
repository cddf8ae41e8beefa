import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { parseInput } from '@/lib/access/parse-input';
import { readInRegion } from '@/lib/base/reader-region';
import { areaField } from '@/lib/records/fields/area-field';
import { celsiusField } from '@/lib/records/fields/celsius-field';
import { choiceField } from '@/lib/records/fields/choice-field';
import { countField } from '@/lib/records/fields/count-field';
import { idField } from '@/lib/records/fields/id-field';
import { lengthField } from '@/lib/records/fields/length-field';
import { enteredMassField, massField, optionalMassField } from '@/lib/records/fields/mass-field';
import { numberField } from '@/lib/records/fields/number-field';
import { moistureField, percentField } from '@/lib/records/fields/percent-field';
import { optionalPhField } from '@/lib/records/fields/ph-field';
import { isBlank, rowsField } from '@/lib/records/fields/rows-field';
import { unitNumbersField } from '@/lib/records/fields/unit-numbers-field';
import { optionalVolumeField } from '@/lib/records/fields/volume-field';

/** What a field makes of an entry: its value, or the code of what is wrong. */
function reading(field: z.ZodType, raw: unknown, region?: string): unknown {
  const parsed = parseInput(z.object({ x: field }), { x: raw }, region);
  if (parsed.kind === 'ok') return parsed.value.x;
  return parsed.kind === 'invalid' ? parsed.errors.map((error) => error.code).join() : parsed.kind;
}

describe('a mass field', () => {
  it.each([
    [{ text: '1.36', unit: 'kg' }, 1360],
    [{ text: '1,36', unit: 'kg' }, 1360],
    [{ text: '2 lb 3 oz', unit: 'kg' }, 992],
    [{ text: '3', unit: 'lb' }, 1361],
    [{ text: '900', unit: 'g' }, 900],
    [1250, 1250],
    ['2', 2000],
    [{ text: '', unit: 'kg' }, 'missing'],
    [{ unit: 'kg' }, 'missing'],
    [undefined, 'missing'],
    [null, 'missing'],
    [{ text: 'plenty', unit: 'kg' }, 'not-a-number'],
    [{ text: '1,250', unit: 'kg' }, 'ambiguous-number'],
    [{ text: '-1', unit: 'kg' }, 'negative'],
    [-5, 'not-positive'],
    [{ text: '0', unit: 'kg' }, 'not-positive'],
    [{ text: '1', unit: 'stone' }, 'unit-unknown'],
    [{ text: '900000', unit: 'kg' }, 'too-large'],
    [12.5, 'not-whole'],
    [Number.NaN, 'not-a-number'],
    [{ text: '9'.repeat(1_000_000), unit: 'kg' }, 'not-a-number'],
    [{ text: '🍄', unit: 'kg' }, 'not-a-number'],
    [['1', '2'], 'missing'],
    [true, 'not-a-number'],
  ])('reads entry %# as expected', (raw, expected) => {
    expect(reading(massField(), raw)).toBe(expected);
  });

  it('answers null for blank when it may be left out', () => {
    expect(reading(optionalMassField(), { text: ' ', unit: 'kg' })).toBeNull();
  });

  it('keeps what was typed beside the grams', () => {
    expect(reading(enteredMassField(), { text: ' 3 lb 0 oz', unit: 'lb' })).toEqual({
      grams: 1361,
      entered: { text: '3 lb 0 oz', unit: 'lb' },
    });
    expect(reading(enteredMassField(), 1361)).toEqual({ grams: 1361, entered: null });
  });

  it('says both readings of an ambiguous entry', () => {
    const parsed = parseInput(z.object({ x: massField() }), { x: { text: '1,250', unit: 'kg' } });
    expect(parsed).toMatchObject({ errors: [{ values: { first: '1.25 kg', second: '1250 kg' } }] });
  });
});

describe('the other number fields', () => {
  it.each([
    [countField(), '20', 20],
    [countField(), '2.5', 'not-whole'],
    [countField(), '0', 'no-units'],
    [countField(), '', 'missing'],
    [countField({ most: 60 }), '61', 'too-large'],
    [percentField(), '70 %', 70],
    [percentField(), '101', 'percent-range'],
    [moistureField(), '100', 'moisture-hundred'],
    [moistureField(), '69,5', 69.5],
    [numberField({ least: 0, most: 14 }), '15', 'too-large'],
    [numberField({ least: 0 }), '-1', 'negative'],
    [celsiusField(), { text: '160 F', unit: 'celsius' }, 71.1],
    [celsiusField(), { text: '71', unit: 'celsius' }, 71],
    [celsiusField(), { text: '500', unit: 'fahrenheit' }, 'temperature-range'],
    [lengthField(), { text: '5', unit: 'in' }, 127],
    [lengthField(), { text: '40 in', unit: 'cm' }, 1016],
    [lengthField(), { text: '200', unit: 'm' }, 'too-large'],
    [areaField(), { text: '50', unit: 'ft2' }, 46452],
    [areaField(), { text: '50 sq ft', unit: 'm2' }, 46452],
    [areaField(), { text: '2,5 m²', unit: 'ft2' }, 25000],
    [areaField(), { text: '0', unit: 'm2' }, 'not-positive'],
  ])('read entry %# as expected', (field, raw, expected) => {
    expect(reading(field, raw)).toBe(expected);
  });

  it.each([
    ['3, 7-9 12', [3, 7, 8, 9, 12]],
    ['', []],
    ['9 – 10', [9, 10]],
    ['3,3', 'duplicate-units'],
    ['9-7', 'unit-numbers-unreadable'],
    ['1-100000', 'unit-numbers-unreadable'],
    ['two', 'unit-numbers-unreadable'],
  ])('unit numbers %j are %j', (raw, expected) => {
    expect(reading(unitNumbersField, raw)).toEqual(expected);
  });
});

describe("the reader's own decimal sign", () => {
  it.each([
    [massField(), { text: '1.250', unit: 'kg' }, 'en-US', 1250],
    [massField(), { text: '1.250', unit: 'kg' }, 'es-US', 1250],
    [massField(), { text: '1.250', unit: 'kg' }, 'es-ES', 'ambiguous-number'],
    [massField(), { text: '1,250', unit: 'kg' }, 'es-ES', 1250],
    [massField(), { text: '1,250', unit: 'kg' }, 'en-US', 'ambiguous-number'],
    [numberField(), '1.250', 'en-US', 1.25],
    [numberField(), '1,250', 'es-ES', 1.25],
    [percentField(), '12.125', 'en-GB', 12.13],
    [optionalPhField, '12.125', 'en-US', 12.13],
    [optionalPhField, '12.125', 'es-ES', 'ambiguous-number'],
    [celsiusField(), { text: '71.125', unit: 'celsius' }, 'en-US', 71.1],
    [optionalVolumeField(), { text: '1.250', unit: 'L' }, 'en-US', 1250],
    [lengthField(), { text: '1.250', unit: 'm' }, 'en-US', 1250],
    [areaField(), { text: '1.250', unit: 'm2' }, 'en-US', 12_500],
    [countField(), '1,000', 'en-US', 'ambiguous-number'],
  ])('settles entry %#, and only that sign', (field, raw, region, expected) => {
    expect(reading(field, raw, region)).toBe(expected);
  });

  it('is forgotten after each form, also after one that broke', () => {
    expect(() =>
      readInRegion('en-US', () => {
        throw new Error('broken');
      }),
    ).toThrow();
    expect(reading(massField(), { text: '1.250', unit: 'kg' })).toBe('ambiguous-number');
  });
});

describe('a choice', () => {
  it('left open is asked for as a choice', () => {
    expect(reading(choiceField(['a', 'b']), '')).toBe('missing-choice');
    expect(reading(idField, undefined)).toBe('missing-choice');
    expect(reading(choiceField(['a', 'b']), 'c')).toBe('not-an-option');
  });
});

describe('rows of a form', () => {
  const rows = rowsField(
    z.object({ lotId: z.string().min(1, 'missing'), mass: optionalMassField() }),
    2,
    (row) => isBlank(row.mass),
  );

  it('drop blank rows and keep the number of a row in its errors', () => {
    const posted = {
      '0': { lotId: '', mass: { text: '', unit: 'kg' } },
      '2': { lotId: '', mass: { text: '1', unit: 'kg' } },
    };
    expect(parseInput(z.object({ rows }), { rows: posted })).toEqual({
      kind: 'invalid',
      errors: [{ field: 'rows.2.lotId', code: 'missing' }],
    });
  });

  it('take a list from a script', () => {
    expect(reading(rows, [{ lotId: 'a', mass: 100 }])).toEqual([{ lotId: 'a', mass: 100 }]);
  });

  it('refuse more rows than there is room for', () => {
    const row = { lotId: 'a', mass: 100 };
    expect(reading(rows, [row, row, row])).toBe('too-many-rows');
  });
});
