import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, dateInZone } from '@/lib/growing/calendar-date';
import { instantInZone } from '@/lib/growing/instant-in-zone';

describe('an instant from a wall clock', () => {
  it.each([
    ['2026-07-04', '16:40', 'America/New_York', '2026-07-04T20:40:00.000Z'],
    ['2026-01-04', '16:40', 'America/New_York', '2026-01-04T21:40:00.000Z'],
    ['2026-03-08', '12:00', 'America/New_York', '2026-03-08T16:00:00.000Z'],
    ['2026-11-01', '12:00', 'America/New_York', '2026-11-01T17:00:00.000Z'],
    ['2026-07-04', '06:00', 'Pacific/Auckland', '2026-07-03T18:00:00.000Z'],
    ['2026-07-04', '00:00', 'Asia/Kathmandu', '2026-07-03T18:15:00.000Z'],
  ])('%s %s in %s', (date, time, zone, expected) => {
    expect(instantInZone(date, time, zone).toISOString()).toBe(expected);
  });

  it('moves on in the hour clocks skip, and takes the first passing of a repeated hour', () => {
    expect(instantInZone('2026-03-08', '02:30', 'America/New_York').toISOString()).toBe(
      '2026-03-08T07:30:00.000Z',
    );
    expect(instantInZone('2026-11-01', '01:30', 'America/New_York').toISOString()).toBe(
      '2026-11-01T05:30:00.000Z',
    );
  });

  it('falls on the date it was typed for', () => {
    const zones = fc.constantFrom(
      'America/New_York',
      'Pacific/Auckland',
      'Europe/Madrid',
      'UTC',
      'America/Bogota',
    );
    fc.assert(
      fc.property(fc.nat(3000), fc.integer({ min: 3, max: 22 }), zones, (days, hour, zone) => {
        const date = addDays('2020-01-01', days);
        expect(dateInZone(instantInZone(date, `${String(hour).padStart(2, '0')}:30`, zone), zone)).toBe(date);
      }),
    );
  });
});
