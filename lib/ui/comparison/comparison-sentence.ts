import type { ComparedRow } from '@/lib/analysis/comparison/compare';

/** The methods that lost least and most as recorded, of those with an estimate, in percent; undefined with fewer than two. */
export function contaminationRange(
  methods: readonly ComparedRow[],
):
  | { readonly low: number; readonly lowest: string; readonly high: number; readonly highest: string }
  | undefined {
  const known = methods
    .flatMap(({ method, contamination }) =>
      method !== undefined && contamination.kind === 'figure' ? [{ method, value: contamination.value }] : [],
    )
    .sort((a, b) => a.value - b.value);
  const [first, last] = [known[0], known.at(-1)];
  if (first === undefined || last === undefined || known.length < 2) return undefined;
  return { low: first.value, lowest: first.method, high: last.value, highest: last.method };
}
