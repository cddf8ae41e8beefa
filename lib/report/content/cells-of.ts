import type { SiteAmount } from '@/lib/analysis/production/read-production';
import type { Cell } from './protect-cells';

/** Amounts summed by site. */
export function amountsOf(rows: readonly SiteAmount[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { siteId, grams } of rows) sums.set(siteId, (sums.get(siteId) ?? 0) + grams);
  return sums;
}

/** The cells of a table, one a key, in the order of the keys. */
export function cellsOf<R extends SiteAmount>(rows: readonly R[], keyOf: (row: R) => string): Cell[] {
  const keys = [...new Set(rows.map(keyOf))].sort();
  return keys.map((key) => ({ key, bySite: amountsOf(rows.filter((row) => keyOf(row) === key)) }));
}
