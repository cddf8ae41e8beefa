import { expect, it } from 'vitest';
import { addDays } from '@/lib/growing/calendar-date';
import { calendarQuarter } from '@/lib/growing/calendar-quarter';

it('every day of two years lies in the quarter of its month', () => {
  for (let day = '2027-01-01'; day < '2029-01-01'; day = addDays(day, 1)) {
    const [first, last] = calendarQuarter(day);
    expect(first <= day && day <= last).toBe(true);
    expect(first).toMatch(/-(01|04|07|10)-01$/);
    expect(calendarQuarter(addDays(last, 1))[0]).toBe(addDays(last, 1));
  }
  expect(calendarQuarter('2028-02-29')).toEqual(['2028-01-01', '2028-03-31']);
  expect(calendarQuarter('2027-12-31')).toEqual(['2027-10-01', '2027-12-31']);
});
