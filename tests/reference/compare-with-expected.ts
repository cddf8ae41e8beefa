import type { Tolerance } from './reference-handler';

/** One leaf of `expected` after comparison. `toleranceUsed` is |difference| over the allowed difference. */
export type LeafComparison = {
  readonly path: string;
  readonly passed: boolean;
  readonly expected: unknown;
  readonly computed: unknown;
  readonly relativeError: number;
  readonly toleranceUsed: number;
};

type Compare = { readonly tolerance: (path: string) => Tolerance; readonly leaves: LeafComparison[] };

/** Compares every leaf of `expected` with the same place in `computed`. */
export function compareWithExpected(
  expected: unknown,
  computed: unknown,
  tolerance: (path: string) => Tolerance,
): LeafComparison[] {
  const leaves: LeafComparison[] = [];
  visit([], expected, computed, { tolerance, leaves });
  return leaves;
}

function visit(place: readonly string[], expected: unknown, computed: unknown, compare: Compare): void {
  if (Array.isArray(expected)) {
    const other = Array.isArray(computed) ? computed : [];
    expected.forEach((item, index) => {
      visit([...place, String(index)], item, other[index], compare);
    });
    if (other.length !== expected.length) {
      compare.leaves.push(
        leaf(
          [...place, 'length'].join('.'),
          false,
          expected.length,
          Array.isArray(computed) ? other.length : computed,
        ),
      );
    }
    return;
  }
  if (typeof expected === 'object' && expected !== null) {
    for (const [key, item] of Object.entries(expected)) {
      visit([...place, key], item, property(computed, key), compare);
    }
    return;
  }
  compare.leaves.push(compareLeaf(place.join('.'), expected, computed, compare.tolerance));
}

function property(value: unknown, key: string): unknown {
  if (typeof value !== 'object' || value === null) return undefined;
  return Object.getOwnPropertyDescriptor(value, key)?.value;
}

function compareLeaf(
  path: string,
  expected: unknown,
  computed: unknown,
  tolerance: (path: string) => Tolerance,
): LeafComparison {
  const target = expected === 'Infinity' || expected === '-Infinity' ? Number(expected) : expected;
  if (typeof target !== 'number' || typeof computed !== 'number') {
    return leaf(path, target === computed, target, computed);
  }
  if (!Number.isFinite(target) || !Number.isFinite(computed)) {
    return leaf(path, target === computed, target, computed);
  }
  const difference = Math.abs(computed - target);
  if (difference === 0) return leaf(path, true, target, computed);
  const { relative, absolute } = tolerance(path);
  const allowed = absolute + relative * Math.abs(target);
  return {
    path,
    passed: difference <= allowed,
    expected: target,
    computed,
    relativeError: target === 0 ? 0 : difference / Math.abs(target),
    toleranceUsed: allowed === 0 ? Number.POSITIVE_INFINITY : difference / allowed,
  };
}

function leaf(path: string, passed: boolean, expected: unknown, computed: unknown): LeafComparison {
  return {
    path,
    passed,
    expected,
    computed,
    relativeError: 0,
    toleranceUsed: passed ? 0 : Number.POSITIVE_INFINITY,
  };
}
