import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { seededRandom } from '../../../../lib/stats/random/seeded-random';

const real = globalThis.WebAssembly;
/** What stands for a class that cannot be made an object of here. */
const refuse = (error: Error) =>
  function refused(): void {
    throw error;
  };

/** Runtimes in which no vector kernel can be had, and what stands for WebAssembly there. */
const without: readonly (readonly [string, object | undefined])[] = [
  ['where there is no WebAssembly', undefined],
  ['where the runtime knows no vector instructions', { ...members(), validate: () => false }],
  [
    'where compiling is forbidden',
    { ...members(), Module: refuse(new real.CompileError('code generation disallowed')) },
  ],
  [
    'where its address space is refused',
    { ...members(), Instance: refuse(new RangeError('could not allocate memory')) },
  ],
];

function members() {
  const { Module, Instance, Memory, CompileError } = real;
  return { Module, Instance, Memory, CompileError, validate: real.validate.bind(real) };
}

beforeEach(() => {
  vi.resetModules();
});

afterEach(() => {
  vi.unstubAllGlobals();
});

it.each(without)('takes off the products of a large block one by one %s', async (_, standIn) => {
  vi.stubGlobal('WebAssembly', standIn);
  const { vectorKernel } = await import('../../../../lib/stats/mixed/linear-algebra/vector-kernel');
  const { subtractProducts } = await import('../../../../lib/stats/mixed/linear-algebra/subtract-products');
  expect(vectorKernel()).toBeUndefined();
  const [rows, columns, depth] = [51, 50, 49];
  const random = seededRandom(11);
  const values = (length: number) => Float64Array.from({ length }, () => random.normal());
  const [a, b, c] = [values(rows * depth), values(columns * depth), values(rows * columns)];
  const own = c.slice();
  subtractProducts(own, 0, columns, a, 0, depth, b, 0, depth, rows, columns, depth);
  for (let i = 0; i < rows; i++) {
    for (let j = 0; j < columns; j++) {
      let sum = 0;
      for (let k = 0; k < depth; k++) sum += (a[i * depth + k] ?? 0) * (b[j * depth + k] ?? 0);
      expect(own[i * columns + j]).toBeCloseTo((c[i * columns + j] ?? 0) - sum, 10);
    }
  }
});

it('does not take a fault of the kernel itself for a runtime without one', async () => {
  vi.stubGlobal('WebAssembly', { ...members(), Instance: refuse(new TypeError('no such import')) });
  const { vectorKernel } = await import('../../../../lib/stats/mixed/linear-algebra/vector-kernel');
  expect(() => vectorKernel()).toThrow('no such import');
});
