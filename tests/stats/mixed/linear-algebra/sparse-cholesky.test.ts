import fc from 'fast-check';
import { expect, test } from 'vitest';
import { factorDense, logDeterminantDense } from '../../../../lib/stats/mixed/linear-algebra/dense-cholesky';
import { invertFromFactor } from '../../../../lib/stats/mixed/linear-algebra/dense-inverse';
import { planElimination } from '../../../../lib/stats/mixed/linear-algebra/elimination';
import { selectedInverse } from '../../../../lib/stats/mixed/linear-algebra/selected-inverse';
import {
  entryIndex,
  factorSparse,
  logDeterminantSparse,
  solveBackward,
  solveForward,
  storageLength,
} from '../../../../lib/stats/mixed/linear-algebra/sparse-cholesky';
import { seededRandom } from '../../../../lib/stats/random/seeded-random';

/** Z'WZ for random rows over the given numbers of levels, sparse as planned and dense by position. */
function randomSystem(seed: number, rows: number, levels: readonly number[]) {
  const random = seededRandom(seed);
  const offsets = levels.map((_, k) => levels.slice(0, k).reduce((sum, count) => sum + count, 0));
  const size = levels.reduce((sum, count) => sum + count, 0);
  const nodes = Int32Array.from({ length: rows * levels.length }, (_, at) => {
    const k = at % levels.length;
    return (offsets[k] ?? 0) + random.integer(levels[k] ?? 1);
  });
  const plan = planElimination(nodes, levels.length, size);
  const matrix = new Float64Array(storageLength(plan));
  const dense = new Float64Array(size * size);
  const scale = Float64Array.from({ length: size }, () => 0.2 + random.next());
  for (let row = 0; row < rows; row++) {
    const weight = 0.5 + random.next();
    const own = Array.from(
      nodes.subarray(row * levels.length, (row + 1) * levels.length),
      (node) => plan.position[node] ?? 0,
    );
    own.forEach((one, a) => {
      own.slice(0, a + 1).forEach((other) => {
        const entry = entryIndex(plan, one, other);
        matrix[entry] = (matrix[entry] ?? 0) + weight;
      });
      own.forEach((other) => {
        dense[one * size + other] =
          (dense[one * size + other] ?? 0) + weight * (scale[one] ?? 0) * (scale[other] ?? 0);
      });
    });
  }
  for (let j = 0; j < size; j++) dense[j * size + j] = (dense[j * size + j] ?? 0) + 1;
  return { plan, matrix, scale, dense, size };
}

const systems = fc.record({
  seed: fc.integer({ min: 1, max: 1e6 }),
  rows: fc.integer({ min: 1, max: 120 }),
  levels: fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 4 }),
});

test('the sparse factor has the determinant of the dense one', () => {
  fc.assert(
    fc.property(systems, ({ seed, rows, levels }) => {
      const { plan, matrix, scale, dense, size } = randomSystem(seed, rows, levels);
      const factor = new Float64Array(matrix.length);
      expect(factorSparse(plan, matrix, scale, factor)).toBe(true);
      expect(factorDense(dense, 0, size)).toBe(true);
      expect(logDeterminantSparse(plan, factor)).toBeCloseTo(logDeterminantDense(dense, 0, size), 9);
    }),
  );
});

test('forward and backward substitution solve the system', () => {
  fc.assert(
    fc.property(systems, ({ seed, rows, levels }) => {
      const { plan, matrix, scale, dense, size } = randomSystem(seed, rows, levels);
      const factor = new Float64Array(matrix.length);
      factorSparse(plan, matrix, scale, factor);
      const truth = Float64Array.from({ length: size }, (_, i) => Math.sin(i + 1));
      const b = Float64Array.from({ length: size }, (_, i) =>
        truth.reduce((sum, value, j) => sum + value * (dense[i * size + j] ?? 0), 0),
      );
      solveForward(plan, factor, b);
      solveBackward(plan, factor, b);
      b.forEach((value, i) => {
        expect(value).toBeCloseTo(truth[i] ?? Number.NaN, 9);
      });
    }),
  );
});

test('the selected entries of the inverse are those of the dense inverse', () => {
  fc.assert(
    fc.property(systems, ({ seed, rows, levels }) => {
      const { plan, matrix, scale, dense, size } = randomSystem(seed, rows, levels);
      const factor = new Float64Array(matrix.length);
      factorSparse(plan, matrix, scale, factor);
      const selected = new Float64Array(matrix.length);
      selectedInverse(plan, factor, selected, new Float64Array(plan.tailSize ** 2));
      factorDense(dense, 0, size);
      const inverse = new Float64Array(size * size);
      invertFromFactor(dense, 0, size, inverse, 0, new Float64Array(size * size));
      for (let j = 0; j < size; j++) {
        expect(selected[entryIndex(plan, j, j)]).toBeCloseTo(inverse[j * size + j] ?? Number.NaN, 10);
      }
      for (let j = 0; j < plan.headSize; j++) {
        for (let p = plan.columnStart[j] ?? 0; p < (plan.columnStart[j + 1] ?? 0); p++) {
          expect(selected[p]).toBeCloseTo(inverse[(plan.rowOf[p] ?? 0) * size + j] ?? Number.NaN, 10);
        }
      }
    }),
  );
});

test('levels of the largest term are eliminated first and without fill', () => {
  const nodes = Int32Array.from([0, 5, 1, 5, 2, 6, 3, 6, 4, 6]);
  const plan = planElimination(nodes, 2, 7);
  expect(plan.columnStart[plan.headSize]).toBeLessThanOrEqual(6);
});

test('a matrix that is not positive definite is refused', () => {
  expect(factorDense(Float64Array.of(1, 0, 2, 1), 0, 2)).toBe(false);
  expect(factorDense(Float64Array.of(Number.NaN), 0, 1)).toBe(false);
});
