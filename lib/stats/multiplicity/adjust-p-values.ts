import { requireProbability } from '../check-argument';
import { elementAt } from '../element-at';

/**
 * Ways to adjust p-values for having looked at several at once.
 *
 * - `benjamini-hochberg`: false discovery rate under independence or positive dependence; the choice for a list of
 *   sites or methods to look into (Benjamini & Hochberg 1995, J R Stat Soc B 57, 289-300).
 * - `benjamini-yekutieli`: false discovery rate under any dependence (2001, Ann Stat 29, 1165-1188).
 * - `holm`: family-wise error under any dependence; the choice for pairwise claims (Holm 1979, Scand J Stat 6, 65-70).
 * - `bonferroni`: as Holm, never more powerful.
 * - `hochberg`, `hommel`: family-wise error, independence or positive dependence (1988, Biometrika 75, 800 and 383).
 *
 * Sources from memory.
 */
export type Adjustment =
  | 'benjamini-hochberg'
  | 'benjamini-yekutieli'
  | 'holm'
  | 'bonferroni'
  | 'hochberg'
  | 'hommel';

/**
 * Adjusted p-values in the order given: a claim may be made at level alpha when its adjusted value is at most alpha.
 *
 * @param pValues 0-1; `null` stands for a comparison that gave no p-value. It stays `null` and is not counted.
 * @throws ArgumentError for a value outside 0-1 or NaN.
 */
export function adjustPValues(
  pValues: readonly (number | null)[],
  adjustment: Adjustment,
): (number | null)[] {
  const given: { position: number; p: number }[] = [];
  pValues.forEach((p, position) => {
    if (p === null) return;
    requireProbability(`pValues[${position}]`, p);
    given.push({ position, p });
  });
  given.sort((one, other) => one.p - other.p || one.position - other.position);
  const adjusted = adjustSorted(
    given.map(({ p }) => p),
    adjustment,
  );
  const answer = pValues.map((): number | null => null);
  given.forEach(({ position }, rank) => {
    answer[position] = Math.min(1, elementAt(adjusted, rank));
  });
  return answer;
}

/** Adjusts ascending p-values; entries may exceed 1. */
function adjustSorted(sorted: readonly number[], adjustment: Adjustment): number[] {
  const count = sorted.length;
  switch (adjustment) {
    case 'bonferroni':
      return sorted.map((p) => count * p);
    case 'holm':
      return cumulativeMaximum(sorted.map((p, rank) => (count - rank) * p));
    case 'hochberg':
      return cumulativeMinimumFromEnd(sorted.map((p, rank) => (count - rank) * p));
    case 'benjamini-hochberg':
      return cumulativeMinimumFromEnd(sorted.map((p, rank) => (count / (rank + 1)) * p));
    case 'benjamini-yekutieli': {
      const harmonic = sorted.reduce((sum, _, rank) => sum + 1 / (rank + 1), 0);
      return cumulativeMinimumFromEnd(sorted.map((p, rank) => ((harmonic * count) / (rank + 1)) * p));
    }
    case 'hommel':
      return hommel(sorted);
  }
}

function cumulativeMaximum(values: readonly number[]): number[] {
  let largest = 0;
  return values.map((value) => {
    largest = Math.max(largest, value);
    return largest;
  });
}

function cumulativeMinimumFromEnd(values: readonly number[]): number[] {
  let smallest = Number.POSITIVE_INFINITY;
  return values
    .toReversed()
    .map((value) => {
      smallest = Math.min(smallest, value);
      return smallest;
    })
    .toReversed();
}

/**
 * Hommel's adjusted values as Simes' test closed over all subsets, by Wright's (1992, Biometrics 48, 1005-1013,
 * from memory) algorithm: for each subset size m the smallest Simes value of the largest p-values.
 */
function hommel(sorted: readonly number[]): number[] {
  const count = sorted.length;
  const adjusted = [...sorted];
  for (let size = count; size >= 2; size -= 1) {
    const smaller = count - size + 1;
    let simes = Number.POSITIVE_INFINITY;
    for (let j = 2; j <= size; j += 1) {
      simes = Math.min(simes, (size * elementAt(sorted, smaller + j - 2)) / j);
    }
    for (let rank = 0; rank < count; rank += 1) {
      const p = elementAt(sorted, rank);
      const bound = rank < smaller ? Math.min(simes, size * p) : simes;
      adjusted[rank] = Math.max(elementAt(adjusted, rank), bound);
    }
  }
  return adjusted;
}
