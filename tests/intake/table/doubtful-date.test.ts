import { describe, expect, test } from 'vitest';
import { doubtfulDate } from '@/lib/intake/table/doubtful-date';

const column = (field: string | null) => ({ field, unit: null });
const columns = [column('code'), column('inoculatedOn'), column(null)];
const rows = (...dates: string[]) => dates.map((date) => ({ cells: ['C-1', date, '04/05/2026'] }));

describe('a date that reads in more than one order', () => {
  test('is told as it is read', () => {
    expect(doubtfulDate(rows('03/11/2026'), { columns, dateOrder: 'mdy' })).toEqual({
      cell: '03/11/2026',
      date: '2026-03-11',
    });
    expect(doubtfulDate(rows('27/11/2026', '03/11/2026'), { columns, dateOrder: 'dmy' })).toEqual({
      cell: '03/11/2026',
      date: '2026-11-03',
    });
    expect(doubtfulDate(rows('04.05.06'), { columns, dateOrder: 'ymd' })?.date).toBe('2004-05-06');
  });

  test('is none where every date says itself which day it is, or the column is not brought in', () => {
    const plain = rows('2026-11-03', '27/11/2026', '05/05/2026', '3 Nov 2026', '850');
    expect(doubtfulDate(plain, { columns, dateOrder: 'mdy' })).toBeUndefined();
  });
});
