export type QuadratureNode = { readonly x: number; readonly weight: number };

/**
 * The Gauss-Legendre rule with `nodes` points on -1 to 1: exact for polynomials up to degree 2 nodes - 1. The points are
 * the roots of the Legendre polynomial, by Newton's method from Tricomi's approximation; weights 2 / ((1 - x^2) P'(x)^2).
 * Source: Abramowitz & Stegun (1964), 25.4.29 (from memory).
 */
export function legendreRule(nodes: number): QuadratureNode[] {
  return Array.from({ length: nodes }, (_, index) => {
    let x = Math.cos((Math.PI * (index + 0.75)) / (nodes + 0.5));
    let slope = 1;
    for (let turn = 0; turn < 8; turn += 1) {
      let below = 1;
      let value = x;
      for (let degree = 2; degree <= nodes; degree += 1) {
        const next = ((2 * degree - 1) * x * value - (degree - 1) * below) / degree;
        below = value;
        value = next;
      }
      slope = (nodes * (x * value - below)) / (x * x - 1);
      x -= value / slope;
    }
    return { x, weight: 2 / ((1 - x * x) * slope * slope) };
  });
}
