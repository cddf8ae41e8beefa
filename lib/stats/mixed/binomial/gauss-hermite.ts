import { findRoot } from '../../find-root';

/** Nodes and weights for averages over a standard normal: E f(Z) is about the sum of weight * f(node); weights sum to 1. */
export type NormalQuadrature = { readonly nodes: Float64Array; readonly weights: Float64Array };

/**
 * Gauss-Hermite quadrature of `points` nodes (1 to 101), exact for polynomials up to degree 2 points - 1. Nodes are the zeros of
 * the Hermite polynomial of that degree, each bracketed by its neighbours of one degree less (zeros of orthogonal
 * polynomials interlace), with the orthonormal recurrence
 *   sqrt(k + 1) h_{k+1} = x h_k - sqrt(k) h_{k-1};
 * weights are 1 over the sum of h_k(x)^2, k < points (Golub & Welsch 1969, from memory).
 */
export function normalQuadrature(points: number): NormalQuadrature {
  let nodes: number[] = [];
  for (let degree = 1; degree <= points; degree++) {
    const edge = Math.sqrt(4 * degree + 2);
    const brackets = [-edge, ...nodes, edge];
    const last = degree === points;
    nodes = brackets.slice(1).map((high, at) => {
      const low = brackets[at] as number;
      return findRoot((x) => hermite(degree, x), low, high, last ? 0 : 1e-6);
    });
  }
  return {
    nodes: Float64Array.from(nodes),
    weights: Float64Array.from(nodes, (x) => 1 / squares(points, x)),
  };
}

function hermite(degree: number, x: number): number {
  let before = 0;
  let value = 1;
  for (let k = 0; k < degree; k++) {
    const next = (x * value - Math.sqrt(k) * before) / Math.sqrt(k + 1);
    before = value;
    value = next;
  }
  return value;
}

function squares(points: number, x: number): number {
  let before = 0;
  let value = 1;
  let sum = 0;
  for (let k = 0; k < points; k++) {
    sum += value * value;
    const next = (x * value - Math.sqrt(k) * before) / Math.sqrt(k + 1);
    before = value;
    value = next;
  }
  return sum;
}
