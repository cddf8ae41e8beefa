/** What a column needs: so that no word breaks, and so that no cell wraps. Points. */
export type ColumnNeed = { readonly least: number; readonly most: number };

/**
 * Widths of a table's columns, summing to `total`. Where every cell fits on one line what is left over is shared out
 * evenly; otherwise each has its least and the rest is shared by how much more each could use.
 */
export function columnWidths(needs: readonly ColumnNeed[], total: number): number[] {
  const sum = (of: (need: ColumnNeed) => number) => needs.reduce((so, need) => so + of(need), 0);
  const most = sum((need) => need.most);
  if (most <= total) return needs.map((need) => need.most + (total - most) / needs.length);
  const least = sum((need) => need.least);
  if (least >= total) return needs.map((need) => (need.least / least) * total);
  const share = (total - least) / (most - least);
  return needs.map((need) => need.least + (need.most - need.least) * share);
}
