import { tSurvival } from '@/lib/stats/distribution/student-t';
import type { ExpectedTogether } from '@/lib/stats/mixed/expected-together';
import { adjustPValues } from '@/lib/stats/multiplicity/adjust-p-values';
import { contrastError } from '@/lib/stats/planning/expected-narrowing';
import type { NextVerdict } from './next-answer';

/** Methods with what is expected of them at one site, jointly. */
export type Compared = {
  readonly methods: readonly string[];
  readonly by: 'yield' | 'loss';
  readonly expected: Omit<ExpectedTogether, 'degreesOfFreedom'> & {
    /** Null for no limit: a stored answer knows no Infinity. */
    readonly degreesOfFreedom: readonly (readonly (number | null)[])[];
  };
};

/** The leader is told from another method when that pair is with all pairs looked at together (Holm): the data chose the leader. */
const significance = 0.05;

/**
 * The method with the most expected yield (the least expected loss where yields cannot be worked out), and which others
 * cannot be told from it. What all methods share at a site, its own luck, does not widen their differences.
 */
export function chooseNext({ methods, by, expected }: Compared): NextVerdict {
  const better = by === 'yield' ? 1 : -1;
  const known = methods.flatMap((method, at) => {
    const estimate = expected.estimates[at];
    return typeof estimate === 'number' ? [{ method, at, value: better * estimate }] : [];
  });
  const [leader, ...others] = [...known].sort((a, b) => b.value - a.value || (a.method < b.method ? -1 : 1));
  if (leader === undefined) return { kind: 'cannot', reason: 'too-thin' };
  const ordered = [leader, ...others];
  // Pairs of the leader come first, in the order of the others.
  const pairs = ordered.flatMap((one, place) =>
    ordered.slice(place + 1).map((other) => [one, other] as const),
  );
  const adjusted = adjustPValues(
    pairs.map(([one, other]) => {
      const error = contrastError(expected.covariance, [one.at, other.at]);
      const degrees = expected.degreesOfFreedom[one.at]?.[other.at] ?? Number.POSITIVE_INFINITY;
      return error === 0 ? 1 : 2 * tSurvival((one.value - other.value) / error, degrees);
    }),
    'holm',
  );
  const told = (index: number) => (adjusted[index] ?? 1) <= significance;
  const sorted = (some: readonly { readonly method: string }[]) => some.map(({ method }) => method).sort();
  return {
    kind: 'told',
    by,
    leader: leader.method,
    equal: sorted(others.filter((_, index) => !told(index))),
    worse: sorted(others.filter((_, index) => told(index))),
  };
}
