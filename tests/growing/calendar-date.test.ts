import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, dateInZone, daysBetween, isCalendarDate, todayInZone } from '@/lib/growing/calendar-date';

describe('calendar dates', () => {
  it('counts the days to first harvest that WINECAP06 prints', () => {
    expect(daysBetween('2006-07-19', '2006-09-15')).toBe(58);
    expect(daysBetween('2006-08-30', '2006-10-13')).toBe(44);
  });

  it('is not moved by summer time, leap days or the turn of the year', () => {
    expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
    expect(addDays('2024-02-28', 1)).toBe('2024-02-29');
    expect(addDays('2023-02-28', 1)).toBe('2023-03-01');
    expect(addDays('2025-12-31', 1)).toBe('2026-01-01');
    expect(addDays('2026-01-01', -1)).toBe('2025-12-31');
  });

  it('adding days and counting them are inverse for any date', () => {
    const day = fc.integer({ min: -300_000, max: 300_000 });
    fc.assert(
      fc.property(day, day, (first, second) => {
        const date = addDays('1970-01-01', first);
        expect(daysBetween(date, addDays(date, second))).toBe(second);
      }),
    );
  });

  it('knows which texts are real dates', () => {
    expect(isCalendarDate('2024-02-29')).toBe(true);
    for (const text of [
      '2023-02-29',
      '2026-02-30',
      '2026-2-3',
      '2026-13-01',
      '2026-00-10',
      '',
      ' 2026-01-01',
      '2026-01-01T00:00',
    ]) {
      expect(isCalendarDate(text), text).toBe(false);
    }
  });

  it('refuses a text that is no date and a part of a day', () => {
    expect(() => addDays('2026-02-30', 1)).toThrow(RangeError);
    expect(() => addDays('2026-02-03', 0.5)).toThrow(RangeError);
    expect(() => addDays('9999-12-31', 1)).toThrow(RangeError);
    expect(() => daysBetween('2026-01-01', 'yesterday')).toThrow(RangeError);
  });

  it('takes the day from the zone, not from UTC', () => {
    const instant = new Date('2026-07-04T01:30:00Z');
    expect(todayInZone('America/New_York', instant)).toBe('2026-07-03');
    expect(todayInZone('Pacific/Auckland', instant)).toBe('2026-07-04');
    expect(dateInZone(new Date('2026-12-31T23:30:00Z'), 'Asia/Tokyo')).toBe('2027-01-01');
  });

  it('names the same day at 23:59 and 00:00 local time on a clock-change day', () => {
    expect(todayInZone('America/New_York', new Date('2026-03-08T04:59:00Z'))).toBe('2026-03-07');
    expect(todayInZone('America/New_York', new Date('2026-03-08T05:00:00Z'))).toBe('2026-03-08');
    expect(todayInZone('America/New_York', new Date('2026-03-09T03:59:00Z'))).toBe('2026-03-08');
  });

  it('refuses an unknown zone', () => {
    expect(() => todayInZone('Mars/Olympus', new Date('2026-01-01T00:00:00Z'))).toThrow(RangeError);
  });
});
