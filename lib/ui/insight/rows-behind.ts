import type { Route } from 'next';
import type { ShownFigure } from '@/lib/analysis/shown-figure';

/** The page of the batches that a figure counted, for `Figure`: a coordinator's, and only where there is one. */
export function rowsBehind(
  { rowsQuery }: Pick<ShownFigure, 'rowsQuery'>,
  coordinates: boolean,
): { readonly rows?: Route } {
  return coordinates && rowsQuery !== '' ? { rows: `/comparison/rows?${rowsQuery}` as Route } : {};
}
