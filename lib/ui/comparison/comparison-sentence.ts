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

/** A method that the sentence leaves out: what was counted there, in percent of its units, and on how little it rests. */
export type NotHeldAgainst = {
  readonly method: string;
  readonly percent: number;
  readonly events: number;
  readonly units: number;
  readonly behind: { readonly of: 'sites' | 'runs' | 'batches'; readonly count: number };
};

/** What the range of the methods leaves out, since too little stands behind it for an estimate, in the order of the rows. */
export function notHeldAgainst(methods: readonly ComparedRow[]): readonly NotHeldAgainst[] {
  return methods.flatMap(({ method, contamination }) => {
    if (method === undefined || contamination.kind !== 'counts' || contamination.parts.denominator === 0)
      return [];
    const { n, parts, reason } = contamination;
    const of = reason === 'too-few-sites' ? 'sites' : reason === 'too-few-runs' ? 'runs' : 'batches';
    return [
      {
        method,
        percent: (100 * parts.numerator) / parts.denominator,
        ...{ events: parts.numerator, units: parts.denominator },
        behind: { of, count: n[of] },
      } as const,
    ];
  });
}
