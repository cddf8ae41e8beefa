import type { RandomSystem } from '../random-system';
import { leverages } from './leverages';

/** What the gradient needs to know of A^-1. */
export type InverseParts = {
  /** z'S A^-1 S z of every row. A fresh array. */
  leverages(): Float64Array;
  /** (A^-1)[j][j]. */
  diagonal(j: number): number;
  /** A x = b in place. */
  solve(x: Float64Array): void;
};

/** All of it exact, from the factor the system stands at. */
export function exactInverse(system: RandomSystem): InverseParts {
  system.invert();
  return {
    leverages: () => leverages(system),
    diagonal: (j) => system.inverseDiagonal(j),
    solve: (x) => system.solve(x),
  };
}
