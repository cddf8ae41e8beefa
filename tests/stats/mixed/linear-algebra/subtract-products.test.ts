import fc from 'fast-check';
import { expect, it } from 'vitest';
import { factorDense } from '../../../../lib/stats/mixed/linear-algebra/dense-cholesky';
import { invertFromFactor } from '../../../../lib/stats/mixed/linear-algebra/dense-inverse';
import { subtractByVectors } from '../../../../lib/stats/mixed/linear-algebra/subtract-by-vectors';
import { subtractProducts } from '../../../../lib/stats/mixed/linear-algebra/subtract-products';
import { vectorKernel } from '../../../../lib/stats/mixed/linear-algebra/vector-kernel';
import { seededRandom } from '../../../../lib/stats/random/seeded-random';

const sizes = fc.record({
  rows: fc.integer({ min: 1, max: 130 }),
  columns: fc.integer({ min: 1, max: 130 }),
  depth: fc.integer({ min: 1, max: 400 }),
  gap: fc.integer({ min: 0, max: 3 }),
  seed: fc.integer({ min: 1, max: 1e6 }),
});

function values(length: number, seed: number): Float64Array {
  const random = seededRandom(seed);
  return Float64Array.from({ length }, () => random.normal());
}

const kernel = vectorKernel();

it('finds the vector unit of the runtime that the tests run on', () => {
  expect(kernel).toBeDefined();
});

it('takes off the same products by the vector unit as one by one, whatever the sizes, and touches nothing else', () => {
  fc.assert(
    fc.property(sizes, ({ rows, columns, depth, gap, seed }) => {
      const strides = { aStride: depth + gap, bStride: depth + 2 * gap, cStride: columns + gap };
      const a = values(gap + rows * strides.aStride, seed);
      const b = values(gap + columns * strides.bStride, seed + 1);
      const c = values(gap + rows * strides.cStride + 5, seed + 2);
      const expected = c.slice();
      for (let i = 0; i < rows; i++) {
        for (let j = 0; j < columns; j++) {
          let sum = 0;
          for (let k = 0; k < depth; k++) {
            sum += (a[gap + i * strides.aStride + k] ?? 0) * (b[gap + j * strides.bStride + k] ?? 0);
          }
          const at = gap + i * strides.cStride + j;
          expected[at] = (expected[at] ?? 0) - sum;
        }
      }
      const sides = { a, b, aStart: gap, bStart: gap, cStart: gap, ...strides };
      const byVectors = c.slice();
      if (kernel) subtractByVectors(kernel, { ...sides, c: byVectors }, rows, columns, depth);
      const either = c.slice();
      const { aStride, bStride, cStride } = strides;
      subtractProducts(either, gap, cStride, a, gap, aStride, b, gap, bStride, rows, columns, depth);
      for (const own of [byVectors, either]) {
        const worst = own.reduce(
          (most, value, at) => Math.max(most, Math.abs(value - (expected[at] ?? 0))),
          0,
        );
        expect(worst).toBeLessThan(1e-13 * depth);
      }
    }),
    { numRuns: 25 },
  );
});

it('factors and inverts a matrix of several panels', () => {
  const size = 330;
  const half = values(size * size, 4);
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = i === j ? size : 0;
      for (let k = 0; k < size; k++) sum += (half[i * size + k] ?? 0) * (half[j * size + k] ?? 0);
      matrix[i * size + j] = sum;
    }
  }
  const factor = matrix.slice();
  expect(factorDense(factor, 0, size)).toBe(true);
  const inverse = new Float64Array(size * size);
  invertFromFactor(factor, 0, size, inverse, 0, new Float64Array(size * size));
  const whole = (own: Float64Array, i: number, j: number) => own[Math.max(i, j) * size + Math.min(i, j)] ?? 0;
  for (const [i, j] of [
    [0, 0],
    [329, 329],
    [200, 17],
    [17, 200],
    [95, 96],
  ] as const) {
    let sum = 0;
    for (let k = 0; k < size; k++) sum += whole(matrix, i, k) * whole(inverse, k, j);
    expect(sum).toBeCloseTo(i === j ? 1 : 0, 10);
  }
});
