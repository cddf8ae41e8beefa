import { describe, expect, it } from 'vitest';
import { readMomentCell } from '@/lib/intake/table/read-moment-cell';

describe('a cell with a day, a time or both', () => {
  it.each([
    ['2026-04-05 18:00', { date: '2026-04-05', time: '18:00' }],
    ['2026-04-05T18:00:30', { date: '2026-04-05', time: '18:00' }],
    ['5/4/2026 6:15 pm', { date: '2026-04-05', time: '18:15' }],
    ['5 de abril de 2026', { date: '2026-04-05' }],
    ['05/04/26', { date: '2026-04-05' }],
    ['18:00', { time: '18:00' }],
    ['8 a. m.', { time: '08:00' }],
    ['12 am', { time: '00:00' }],
    ['9h30', { time: '09:30' }],
    ['0.4375', { time: '10:30' }],
    ['1899-12-31 10:30', { time: '10:30' }],
  ])('reads %j', (text, said) => {
    expect(readMomentCell(text, 'dmy', true)).toEqual(said);
  });

  it.each([['18'], ['25:00'], ['2026-04-05 25:00'], ['31/02/2026 10:00'], ['overnight'], ['1.5']])(
    'does not guess at %j',
    (text) => {
      expect(readMomentCell(text, 'dmy', true)).toBeUndefined();
    },
  );

  it.each([
    ['0.30', { time: '00:30' }],
    ['0.15', { time: '00:15' }],
    ['18.00', { time: '18:00' }],
  ])('takes %j of a text for a time of day, never for a part of one', (text, said) => {
    expect(readMomentCell(text, 'dmy', false)).toEqual(said);
  });
});
