import type { SiteAmount } from '@/lib/analysis/production/read-production';
import { cellsOf } from './cells-of';
import type { ReportTable } from './funder-report';
import { type GroundSum, knownSums } from './ground';
import { type Cell, type ProtectionRule, protectCells } from './protect-cells';

/** An additive table: its cells by site, as it is told, and what that lets its readers know. */
export type AmountPart = {
  readonly cells: readonly Cell[];
  readonly table: ReportTable;
  readonly known: readonly GroundSum[];
};

export function amountPart<R extends SiteAmount>(
  rows: readonly R[],
  keyOf: (row: R) => string,
  rule: ProtectionRule,
): AmountPart {
  const cells = cellsOf(rows, keyOf);
  const table = protectCells(cells, rule);
  return { cells, table, known: knownSums(table, cells) };
}
