import { describe, expect, test } from 'vitest';
import { readerLocale } from '@/lib/base/reader-locale';
import { formatDate, formatDateWithWeekday, formatDayMonth } from '@/lib/ui/format/date-text';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { formatInterval } from '@/lib/ui/format/interval-text';
import { lastWholeDay } from '@/lib/ui/format/last-whole-day';
import { formatMassWithTwin } from '@/lib/ui/format/mass-text';
import { formatNumber } from '@/lib/ui/format/number-text';
import { formatPercent } from '@/lib/ui/format/percent-text';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { formatTemperature } from '@/lib/ui/format/temperature-text';
import { formatVolume } from '@/lib/ui/format/volume-text';

/** Kept-together spaces as plain ones, so that the expectations can be read. */
function plain(text: string): string {
  return text.replace(/[\u00a0\u202f]/g, ' ');
}

describe('dates', () => {
  test('are written with the month by name, the same day in every region', () => {
    expect(plain(formatDate('2026-07-04', 'en-US'))).toBe('4 Jul 2026');
    expect(plain(formatDate('2026-07-04', 'es-US'))).toBe('4 jul 2026');
    expect(plain(formatDate('2026-09-30', 'es-ES'))).toBe('30 sept 2026');
    expect(plain(formatDayMonth('2026-12-31', 'en-US'))).toBe('31 Dec');
    expect(plain(formatDateWithWeekday('2026-07-04', 'es-MX'))).toBe('sábado 4 de julio de 2026');
  });

  test('end with the day before a midnight, and with the same day at any other time', () => {
    const zone = 'America/New_York';
    expect(lastWholeDay(new Date('2027-01-26T05:00:00Z'), zone)).toBe('2027-01-25');
    expect(lastWholeDay(new Date('2027-01-26T05:01:00Z'), zone)).toBe('2027-01-26');
  });

  test('refuse what is no calendar date', () => {
    expect(() => formatDate('4/7/2026', 'en-US')).toThrow(RangeError);
  });

  test('of an instant are those of the zone', () => {
    expect(plain(formatInstant(new Date('2026-07-04T01:30:00Z'), 'America/New_York', 'en-US'))).toBe(
      '3 Jul 2026, 9:30 PM',
    );
  });
});

describe('numbers', () => {
  test('follow the country of the reader, whatever the language', () => {
    expect(readerLocale({ language: 'es', region: 'en-US' })).toBe('es-US');
    expect(readerLocale({ language: 'en', region: 'es-ES' })).toBe('en-ES');
    expect(readerLocale({ language: 'es', region: 'es' })).toBe('es');
    expect(formatNumber(1234.5, 'es-US', 1)).toBe('1,234.5');
    expect(formatNumber(1234.5, 'en-ES', 1)).toBe('1.234,5');
  });

  test('below zero carry a minus sign and not a hyphen', () => {
    expect(formatNumber(-2.14, 'en-US', 1)).toBe('−2.1');
    expect(formatNumber(-0.01, 'en-US', 1)).toBe('0.0');
  });

  test('as percentages and intervals stay on one line', () => {
    expect(formatPercent(12.44, 'en-US')).toBe('12.4\u00a0%');
    expect(formatInterval(8.06, 18.34, 'en-US')).toBe('8.1–18.3');
    expect(plain(formatInterval(-2.1, 3, 'en-US'))).toBe('−2.1 … 3.0');
  });
});

describe('quantities', () => {
  test('name the reader’s unit first and the twin in brackets', () => {
    expect(plain(formatMassWithTwin(1360, 'kg', 'en-US'))).toBe('1.36 kg (3 lb 0 oz)');
    expect(plain(formatMassWithTwin(1360, 'lb', 'en-US'))).toBe('3 lb 0 oz (1.36 kg)');
  });

  test('of temperature and volume are turned into the reader’s unit', () => {
    expect(plain(formatTemperature(71.1, 'celsius', 'en-US'))).toBe('71.1 °C');
    expect(plain(formatTemperature(71.1, 'fahrenheit', 'en-US'))).toBe('160 °F');
    expect(plain(formatVolume(56.781, 'gallon', 'en-US'))).toBe('15.0 gal');
  });
});

test('a label begins with a capital unless its writing is its own', () => {
  expect(sentenceCase('fresh mass')).toBe('Fresh mass');
  expect(sentenceCase('pH of the water')).toBe('pH of the water');
  expect(sentenceCase('índice')).toBe('Índice');
  expect(sentenceCase('')).toBe('');
});
