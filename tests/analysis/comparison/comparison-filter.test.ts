import { describe, expect, it } from 'vitest';
import {
  filterOfQuestion,
  parseQuestion,
  queryOfQuestion,
} from '@/lib/analysis/adjusted/question-scope.input';
import {
  completeFilter,
  parseComparisonQuery,
  queryOfFilter,
} from '@/lib/analysis/comparison/comparison-filter.input';

const oyster = '0190a2b4-0000-7000-8000-000000000001';
const defaults = { from: '2024-11-15', to: '2026-11-15', species: oyster, container: 'bag' } as const;
const read = (query: Parameters<typeof parseComparisonQuery>[0]) =>
  completeFilter(parseComparisonQuery(query), defaults);

describe('the filter of the comparison in the address', () => {
  it('opens on one species and one container kind, materials together', () => {
    expect(read({})).toEqual({ ...defaults, material: 'all', method: undefined, site: undefined });
  });

  it('reads the days of the form from their three boxes, month names too, and one ISO date from a link', () => {
    const boxes = {
      from__day: '1',
      from__month: 'marzo',
      from__year: '2025',
      to__day: '30',
      to__month: '6',
      to__year: '2025',
    };
    expect(read(boxes)).toMatchObject({ from: '2025-03-01', to: '2025-06-30' });
    expect(read({ ...boxes, from__month: 'Brumaire' }).from).toBe(defaults.from);
    expect(read({ from: '2025-03-01' }).from).toBe('2025-03-01');
  });

  it('pools species only when the address asks for it', () => {
    expect(read({ species: 'all' }).species).toBe('all');
    expect(read({ species: '' }).species).toBe(oyster);
  });

  it('has no way to pool container kinds', () => {
    expect(read({ container: 'all' }).container).toBe('bag');
    expect(read({ container: 'bed' }).container).toBe('bed');
  });

  it('takes what it cannot read as not asked', () => {
    const nonsense = {
      from: '2026-02-30',
      to: 'soon',
      species: "x' or 1=1",
      material: '🍄',
      method: ['a', 'b'],
      site: '7',
    };
    expect(read(nonsense)).toEqual({ ...defaults, material: 'all', method: undefined, site: undefined });
  });

  it('turns about a period given the wrong way round', () => {
    expect(read({ from: '2026-05-01', to: '2026-04-01' })).toMatchObject({
      from: '2026-04-01',
      to: '2026-05-01',
    });
  });

  it('is understood by the questions, so that a link to one asks of the same batches', () => {
    const filter = read({ species: oyster, container: 'log', material: 'mixed', to: '2025-06-30' });
    const link = Object.fromEntries(new URLSearchParams(queryOfQuestion({ ...filter, level: 'none' })));
    expect(filterOfQuestion(parseQuestion(link), { ...defaults, species: 'all', to: '2027-01-01' })).toEqual(
      filter,
    );
  });

  it('reads back the address it writes', () => {
    const filter = read({
      species: 'all',
      container: 'log',
      material: 'mixed',
      method: 'mixed',
      site: oyster,
    });
    expect(read(Object.fromEntries(new URLSearchParams(queryOfFilter(filter))))).toEqual(filter);
  });
});
