import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseCountEntry } from '@/lib/growing/count-entry';
import { decimalReadings } from '@/lib/growing/decimal-reading';
import { parseDurationEntry } from '@/lib/growing/duration-entry';
import { parseLengthEntry } from '@/lib/growing/length-entry';
import { parseNumberEntry } from '@/lib/growing/number-entry';
import { parsePercentEntry } from '@/lib/growing/percent-entry';
import { parseTemperatureEntry } from '@/lib/growing/temperature-entry';
import { parseVolumeEntry } from '@/lib/growing/volume-entry';

describe('number entry', () => {
  it.each([
    ['12.4', 12.4],
    ['12,4', 12.4],
    ['pH 12.4', 12.4],
    ['12.4 pH', 12.4],
    ['0.1', 0.1],
    ['1234567', 1_234_567],
  ])('reads %j', (text, value) => {
    expect(parseNumberEntry(text)).toEqual({ kind: 'number', value });
  });

  it('asks about 1,250 and refuses a negative unless allowed', () => {
    expect(parseNumberEntry('1,250')).toEqual({ kind: 'ambiguous', readings: [1.25, 1250] });
    expect(parseNumberEntry('-3')).toEqual({ kind: 'unreadable', why: 'negative' });
    expect(parseNumberEntry('-3', { allowNegative: true })).toEqual({ kind: 'number', value: -3 });
  });

  it('reads any decimal written with either sign exactly, when it does not look like thousands', () => {
    const decimals = fc.tuple(fc.nat(999_999), fc.stringMatching(/^\d{1,2}$|^\d{4,6}$/));
    fc.assert(
      fc.property(decimals, fc.constantFrom('.', ','), ([whole, fraction], sign) => {
        expect(decimalReadings(`${whole}${sign}${fraction}`)).toEqual([Number(`${whole}.${fraction}`)]);
      }),
    );
  });
});

describe('count entry', () => {
  it('reads whole numbers; a grouped number is no decimal here', () => {
    expect(parseCountEntry('24')).toEqual({ kind: 'number', value: 24 });
    expect(parseCountEntry('1,250')).toEqual({ kind: 'number', value: 1250 });
    expect(parseCountEntry('2.0')).toEqual({ kind: 'number', value: 2 });
  });

  it('asks about 1,000 and refuses parts', () => {
    expect(parseCountEntry('1,000')).toEqual({ kind: 'ambiguous', readings: [1, 1000] });
    expect(parseCountEntry('2.5')).toEqual({ kind: 'unreadable', why: 'not-whole' });
    expect(parseCountEntry('-1')).toEqual({ kind: 'unreadable', why: 'negative' });
  });
});

describe('duration entry', () => {
  it.each([
    ['90', 90],
    ['1.5 h', 90],
    ['1,5 horas', 90],
    ['1 h 30 min', 90],
    ['1:30', 90],
    ['18 hrs', 1080],
    ['45 minutos', 45],
  ])('reads %j', (text, minutes) => {
    expect(parseDurationEntry(text, 'min')).toEqual({ kind: 'duration', minutes });
  });

  it('takes the unit of its column where none is written, and refuses what is no length of time', () => {
    expect(parseDurationEntry('16.5', 'h')).toEqual({ kind: 'duration', minutes: 990 });
    expect(parseDurationEntry('-2', 'h')).toEqual({ kind: 'unreadable', why: 'negative' });
    expect(parseDurationEntry('overnight', 'h')).toEqual({ kind: 'unreadable', why: 'not-a-number' });
    expect(parseDurationEntry('1 h 70 min', 'h')).toEqual({ kind: 'unreadable', why: 'part-too-large' });
  });
});

describe('percent entry', () => {
  it.each([['70'], ['70 %'], ['70%'], ['70,0 por ciento'], ['70 percent']])('reads %j as 70', (text) => {
    expect(parsePercentEntry(text)).toEqual({ kind: 'number', value: 70 });
  });
});

describe('temperature entry', () => {
  it.each([
    ['71', 'celsius', 71],
    ['71,5 °C', 'fahrenheit', 71.5],
    ['71ºC', 'fahrenheit', 71],
    ['71 ℃', 'fahrenheit', 71],
    ['160 F', 'celsius', 71.1111],
    ['160° F', 'celsius', 71.1111],
    ['160°', 'fahrenheit', 71.1111],
    ['71°', 'celsius', 71],
    ['-5', 'celsius', -5],
    ['−5 °C', 'fahrenheit', -5],
  ] as const)('reads %j (default %s)', (text, unit, celsius) => {
    const entry = parseTemperatureEntry(text, unit);
    expect(entry.kind).toBe('temperature');
    if (entry.kind === 'temperature') expect(entry.celsius).toBeCloseTo(celsius, 4);
  });

  it('does not take another unit for a temperature', () => {
    expect(parseTemperatureEntry('70 kg', 'celsius')).toEqual({ kind: 'unreadable', why: 'unknown-unit' });
  });
});

describe('volume entry', () => {
  it.each([
    ['50', 'L', 50],
    ['50 litros', 'gal', 50],
    ['500 ml', 'L', 0.5],
    ['14 gal', 'L', 52.9958],
    ['14', 'gal', 52.9958],
    ['3 galones', 'L', 11.3562],
    ['2 gal 2 qt', 'L', 9.4635],
    ['½ cup', 'L', 0.1183],
  ] as const)('reads %j (default %s) as %d L', (text, unit, litres) => {
    const entry = parseVolumeEntry(text, unit);
    expect(entry.kind).toBe('volume');
    if (entry.kind === 'volume') expect(entry.litres).toBeCloseTo(litres, 4);
  });
});

describe('volume and temperature entry', () => {
  it('ask about thousands', () => {
    expect(parseVolumeEntry('1,250 L', 'L')).toEqual({ kind: 'ambiguous', readings: [1.25, 1250] });
    expect(parseTemperatureEntry('1,250', 'celsius')).toEqual({ kind: 'ambiguous', readings: [1.25, 1250] });
    expect(parsePercentEntry('1,250')).toEqual({ kind: 'ambiguous', readings: [1.25, 1250] });
  });
});

describe('length entry', () => {
  it.each([
    ['40 in', 'cm', 1016],
    ['40"', 'cm', 1016],
    ['12,7 cm', 'in', 127],
    ['3\' 4"', 'cm', 1016],
    ['3 ft 4 in', 'cm', 1016],
    ['3 pies 4 pulgadas', 'cm', 1016],
    ['1 m 2 cm', 'in', 1020],
    ['2.5', 'cm', 25],
    ['1½"', 'cm', 38.1],
  ] as const)('reads %j (default %s) as %d mm', (text, unit, millimetres) => {
    const entry = parseLengthEntry(text, unit);
    expect(entry.kind).toBe('length');
    if (entry.kind === 'length') expect(entry.millimetres).toBeCloseTo(millimetres, 6);
  });

  it('asks about thousands and about a second part without a unit', () => {
    expect(parseLengthEntry('1,250', 'mm').kind).toBe('ambiguous');
    expect(parseLengthEntry('3 ft 4', 'cm').kind).toBe('ambiguous');
  });
});
