import { parse } from 'csv-parse/sync';
import { describe, expect, it } from 'vitest';
import { compare } from '@/lib/analysis/comparison/compare';
import { comparisonCsv } from '@/lib/report/comparison-csv';
import { contaminatedBags, judgedOn, oysterBags } from '../analysis/bags-of';

const asOf = '2026-12-31T12:00:00.000Z';
const scope = {
  species: 'Oyster',
  container: 'bag',
  material: 'straw',
  from: '2026-01-01',
  to: '2026-12-31',
};
const names = {
  methodName: (key: string | undefined) => (key === undefined ? 'All methods' : `=cmd|${key}`),
  siteName: (id: string | undefined) => id ?? 'all sites',
};

function lines(counts: readonly number[]): Record<string, string>[] {
  const { total, cells } = compare(judgedOn(contaminatedBags(counts)), oysterBags, asOf);
  return parse(comparisonCsv(total, cells, names, scope), { columns: true, bom: true });
}

describe('the comparison as CSV', () => {
  it('writes each figure unrounded with its limits and the sums it divides', () => {
    const cell = lines([1, 2, 4])[1];
    expect(cell).toMatchObject({
      level: 'cell',
      species: 'Oyster',
      contamination_percent_value: String((100 * 7) / 60),
      contamination_percent_numerator: '7',
      contamination_percent_denominator: '60',
      contamination_percent_clusters_by: 'treatment-run',
      yield_percent_numerator: '18000',
      yield_percent_denominator: '30000',
      as_of: asOf,
    });
    expect(Number(cell?.contamination_percent_low)).toBeLessThan(Number(cell?.contamination_percent_high));
  });

  it('leaves the value empty and says why where only counts are shown', () => {
    expect(lines([1, 2])[1]).toMatchObject({
      contamination_percent_value: '',
      contamination_percent_low: '',
      contamination_percent_note: 'too-few-runs',
      contamination_percent_numerator: '3',
    });
  });

  it('lets no name become a formula', () => {
    expect(lines([1])[1]?.method).toMatch(/^'=cmd/);
  });
});
