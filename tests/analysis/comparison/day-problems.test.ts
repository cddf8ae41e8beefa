import { describe, expect, it } from 'vitest';
import { dayProblemsOfQuestion } from '@/lib/analysis/adjusted/question-scope.input';
import { parseComparisonQuery } from '@/lib/analysis/comparison/comparison-filter.input';
import { dayProblems } from '@/lib/analysis/comparison/day-problems';

const usual = { from: '2024-10-01', to: '2026-11-15' } as const;
const boxes = (name: string, day: string, month: string, year: string) => ({
  [`${name}__day`]: day,
  [`${name}__month`]: month,
  [`${name}__year`]: year,
});

describe('the days that an address asks for', () => {
  it('are in order where they exist and begin before they end, or are not given', () => {
    expect(dayProblems({}, usual)).toEqual([]);
    expect(dayProblems({ from: '', ...boxes('to', '', '', '') }, usual)).toEqual([]);
    expect(dayProblems({ from: '2026-05-01', ...boxes('to', '1', 'mayo', '2026') }, usual)).toEqual([]);
  });

  it('are named where no such day exists, in the boxes and in a link', () => {
    const impossible = { ...boxes('from', '31', 'Feb', '2026'), ...boxes('to', '1', '1', '2026') };
    expect(dayProblems(impossible, usual)).toEqual([{ field: 'from', code: 'not-a-date' }]);
    expect(dayProblems({ from: '2026-13-45', to: 'abc' }, usual)).toEqual([
      { field: 'from', code: 'not-a-date' },
      { field: 'to', code: 'not-a-date' },
    ]);
  });

  it('are named where only a part of the boxes was filled, which is not the same as none', () => {
    const half = { from__day: '5', from__month: '', from__year: '' };
    expect(dayProblems(half, usual)).toEqual([{ field: 'from', code: 'not-a-date' }]);
    expect(parseComparisonQuery(half).from).toBeUndefined();
  });

  it('are named where the beginning lies after the end, at the end if both were typed', () => {
    expect(dayProblems({ from: '2026-05-02', to: '2026-05-01' }, usual)).toEqual([
      { field: 'to', code: 'before', values: { date: '2026-05-02' } },
    ]);
    expect(dayProblems({ from: '2027-01-01' }, usual)).toEqual([
      { field: 'from', code: 'after', values: { date: '2026-11-15' } },
    ]);
    expect(dayProblems({ to: '2020-01-01' }, usual)).toEqual([
      { field: 'from', code: 'after', values: { date: '2020-01-01' } },
    ]);
  });

  it('of a question begin three years before its end, so that an early end alone is in order', () => {
    const defaults = { ...usual, species: 'all', container: 'bag' } as const;
    expect(dayProblemsOfQuestion({ to: '2020-01-01' }, defaults)).toEqual([]);
    expect(dayProblemsOfQuestion({ to: '2020-02-30' }, defaults)).toHaveLength(1);
  });
});
