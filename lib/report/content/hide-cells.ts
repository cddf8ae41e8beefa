import type { ReportTable } from './funder-report';
import { type GroundSum, groundSumOf, hiddenKey } from './ground';
import { mayBeShown, type ProtectionRule } from './protect-cells';
import { unionOf } from './tells-few';

/** A table of a report with what it lets its readers know. */
export type ToldTable = { readonly table: ReportTable; readonly known: readonly GroundSum[] };

/**
 * A table of which further cells are kept back, its total as it was; undefined where the total less the shown cells would
 * tell of few sites, or one cell by itself.
 */
export function hideCells(
  { table: { total, cells }, known }: ToldTable,
  keys: ReadonlySet<string>,
  rule: ProtectionRule,
): ToldTable | undefined {
  const gone = known.filter(({ key }) => keys.has(key) || key === hiddenKey);
  const left = known.filter((sum) => !gone.includes(sum));
  const table: ReportTable = {
    total,
    cells: cells.map((cell) => (keys.has(cell.key) ? { key: cell.key, kind: 'protected' } : cell)),
  };
  if (total.kind === 'protected' || gone.length === 0) return { table, known: left };
  const together = unionOf(gone);
  const alone = gone.length === 1 && gone[0]?.key !== hiddenKey && left.length > 0;
  if (alone || !mayBeShown(together, rule)) return undefined;
  return { table, known: [...left, groundSumOf(hiddenKey, together)] };
}
