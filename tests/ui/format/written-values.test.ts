import { describe, expect, it } from 'vitest';
import { writtenValues } from '@/lib/ui/format/written-values';

const metric = { massUnit: 'kg', temperatureUnit: 'celsius', volumeUnit: 'litre' } as const;
const customary = { massUnit: 'lb', temperatureUnit: 'fahrenheit', volumeUnit: 'gallon' } as const;
const plain = (values: Record<string, string | number>) =>
  Object.fromEntries(
    Object.entries(values).map(([name, value]) => [name, String(value).replace(/[\u00a0\u202f]/g, ' ')]),
  );
const named = { fresh: '1360 g', max: '2.5 kg', bath: '56.8 L', log: '12.7 cm', hot: '71 °C', tall: '1 m' };

describe('what a command names', () => {
  it('is written in the reader’s units', () => {
    expect(plain(writtenValues(named, metric, 'en-US'))).toEqual({
      ...{ fresh: '1.36 kg', max: '2.5 kg', bath: '56.8 L', log: '12.7 cm', hot: '71.0 °C', tall: '1 m' },
    });
    expect(plain(writtenValues(named, customary, 'en-US'))).toEqual({
      ...{
        fresh: '3 lb 0 oz',
        max: '5 lb 8 oz',
        bath: '15.0 gal',
        log: '5.0 in',
        hot: '160 °F',
        tall: '3 ft',
      },
    });
  });

  it('is written with the reader’s decimal sign, and days with the name of the month', () => {
    expect(plain(writtenValues({ max: '2.5 kg', date: '2026-07-04' }, metric, 'es-ES'))).toEqual({
      ...{ max: '2,5 kg', date: '4 jul 2026' },
    });
  });

  it('is left alone where it is neither a day nor a quantity', () => {
    const values = { code: 'KTR-7', count: 3, lot: '12 g-lot' };
    expect(writtenValues(values, customary, 'en-US')).toEqual(values);
  });
});
