/** What is printed of one batch: its own label, or one for each unit. */
export type LabelPlan = {
  readonly per: 'batch' | 'unit';
  /** Only these units; empty means all. */
  readonly units: readonly number[];
  /** Of each label. */
  readonly copies: number;
};

/** One label: of which batch, counted from 0, and of which unit. */
export type PlannedLabel = { readonly batch: number; readonly unit?: number };

export const mostLabels = 2000;

export type LabelPlanProblem =
  | { readonly code: 'unit-numbers'; readonly available: number }
  | { readonly code: 'too-many-labels'; readonly max: number };

/**
 * The labels of several batches in the order they are printed. A batch of one unit, such as a bed, has one label with
 * no number.
 *
 * @param unitCounts inoculated units of each batch
 */
export function planLabels(
  unitCounts: readonly number[],
  { per, units, copies }: LabelPlan,
): readonly PlannedLabel[] | LabelPlanProblem {
  const fewest = Math.min(...unitCounts);
  if (per === 'unit' && units.some((unit) => unit > fewest))
    return { code: 'unit-numbers', available: fewest };
  const perBatch = unitCounts.map((count) =>
    per === 'batch' ? 1 : units.length === 0 ? count : units.length,
  );
  const total = perBatch.reduce((sum, count) => sum + count, 0) * copies;
  if (total > mostLabels) return { code: 'too-many-labels', max: mostLabels };
  return unitCounts.flatMap((count, batch) => {
    if (per === 'batch' || count === 1) return Array.from({ length: copies }, () => ({ batch }));
    const numbers = units.length === 0 ? Array.from({ length: count }, (_, at) => at + 1) : units;
    return numbers.flatMap((unit) => Array.from({ length: copies }, () => ({ batch, unit })));
  });
}
