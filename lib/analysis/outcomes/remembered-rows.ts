import type { SiteDates } from '../comparison/batch-facts';
import type { ComparedRow } from '../comparison/compare';
import { type ComparisonFilter, queryOfFilter } from '../comparison/comparison-filter.input';
import { rowAsOf } from '../comparison/row-as-of';
import type { WholeSums } from './read-whole-sums';
import { rowOfSums, rowsOfMethods } from './rows-of-sums';

/** Of so many ways to ask for the same sums rows are remembered. */
const most = 8;

/** By the sums that they are made of, which stand for one state of the records on one day, and by the question. */
const known = new WeakMap<WholeSums, Map<string, readonly ComparedRow[]>>();

type Asked = { readonly filter: ComparisonFilter; readonly today: SiteDates; readonly asOf: string };

/** The rows as of now: the same sums say that nothing was written since they were worked out. */
function rowsOf(
  whole: WholeSums,
  of: 'all' | 'methods',
  { filter, asOf }: Asked,
  work: () => readonly ComparedRow[],
): readonly ComparedRow[] {
  const rows = known.get(whole) ?? new Map<string, readonly ComparedRow[]>();
  known.set(whole, rows);
  const question = `${of} ${queryOfFilter(filter)}`;
  const before = rows.get(question);
  if (before !== undefined) return before.map((row) => rowAsOf(row, asOf));
  const own = work();
  const [oldest] = rows.keys();
  if (rows.size >= most && oldest !== undefined) rows.delete(oldest);
  rows.set(question, own);
  return own;
}

/** The row of everything that the sums hold. */
export function rowOfWhole(whole: WholeSums, asked: Asked): ComparedRow {
  const { filter, today, asOf } = asked;
  const row = () => rowOfSums({ ...whole.sums, apart: whole.apart, today }, filter, filter.method, asOf);
  return rowsOf(whole, 'all', asked, () => [row()])[0] ?? row();
}

/** The rows of each method that the sums hold. */
export function methodsOfWhole(whole: WholeSums, asked: Asked): readonly ComparedRow[] {
  return rowsOf(whole, 'methods', asked, () =>
    rowsOfMethods({ sums: whole.sums, apart: whole.apart, today: asked.today }, asked.filter, asked.asOf),
  );
}
