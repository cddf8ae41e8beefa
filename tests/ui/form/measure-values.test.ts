import { describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { parseInput } from '@/lib/access/parse-input';
import { formToObject } from '@/lib/base/form-data';
import { optionalAreaField } from '@/lib/records/fields/area-field';
import { optionalCelsiusField } from '@/lib/records/fields/celsius-field';
import { optionalLengthField } from '@/lib/records/fields/length-field';
import { optionalVolumeField } from '@/lib/records/fields/volume-field';
import {
  areaValues,
  celsiusValues,
  lengthValues,
  type MeasureReader,
  volumeValues,
} from '@/lib/ui/form/measure-values';

const metric: MeasureReader = {
  ...{ language: 'es', region: 'es-ES', massUnit: 'kg', temperatureUnit: 'celsius', volumeUnit: 'litre' },
};
const customary: MeasureReader = {
  ...{ language: 'en', region: 'en-US', massUnit: 'lb', temperatureUnit: 'fahrenheit', volumeUnit: 'gallon' },
};

/** Reads a field back as its command would, with the reader's decimal sign. */
function readBack(field: z.ZodType, values: Record<string, string>, { language, region }: MeasureReader) {
  const data = new FormData();
  for (const [name, value] of Object.entries(values)) data.append(name, value);
  return parseInput(field, formToObject(data).it, `${language}-${region.slice(-2)}`);
}

describe.each([
  ['metric with a decimal comma', metric],
  ['customary with a decimal point', customary],
] as const)('a measure put back into its field, %s', (_what, reader) => {
  it.each([1, 25, 127, 1016, 99_999])('keeps a length of %i mm', (mm) => {
    expect(readBack(optionalLengthField(), lengthValues('it', mm, reader), reader)).toMatchObject({
      value: mm,
    });
  });

  it.each([929, 14_864, 20_000, 99_999_999])('keeps an area of %i cm²', (cm2) => {
    expect(readBack(optionalAreaField(), areaValues('it', cm2, reader), reader)).toMatchObject({
      value: cm2,
    });
  });

  it.each([1, 946, 56_781, 1_000_001])('keeps a volume of %i mL', (ml) => {
    expect(readBack(optionalVolumeField(), volumeValues('it', ml, reader), reader)).toMatchObject({
      value: ml,
    });
  });

  it.each([-17.8, 0, 71, 82.2])('keeps %f °C to a tenth', (celsius) => {
    const read = readBack(optionalCelsiusField(), celsiusValues('it', celsius, reader), reader);
    expect(read.kind === 'ok' && Number(read.value)).toBeCloseTo(celsius, 1);
  });
});

it('is in the reader’s own unit: 127 mm is 5 in, 1.5 m² is 16.146 ft², 71 °C is 159.8 °F', () => {
  expect(lengthValues('it', 127, customary)).toEqual({ it: '5', it__unit: 'in' });
  expect(areaValues('it', 15_000, customary)).toEqual({ it: '16.146', it__unit: 'ft2' });
  expect(celsiusValues('it', 71, customary)).toEqual({ it: '159.8', it__unit: 'fahrenheit' });
  expect(volumeValues('it', 56_800, metric)).toEqual({ it: '56,8', it__unit: 'L' });
});
