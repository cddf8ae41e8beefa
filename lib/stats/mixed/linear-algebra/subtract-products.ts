import { subtractByVectors } from './subtract-by-vectors';
import { vectorKernel } from './vector-kernel';

/** Multiplications from which on it pays to pack the factors for the vector unit. */
const WORTH_PACKING = 100_000;

/**
 * The one dense kernel: C[i][j] -= sum over k of A[i][k] * B[j][k], for `rows` x `columns` entries of C.
 *
 * All three are row-major inside flat arrays: entry (i, k) of A is `a[aStart + i * aStride + k]`. Both factors are read along
 * their rows, so 4 x 4 entries of C live in local variables while k runs (32 operations for 8 loads), which is what
 * makes the factorisation of a small dense block fast; larger ones go by the vector unit where there is one. C may share its array with A and B as long as
 * the entries written are not among those read.
 */
export function subtractProducts(
  c: Float64Array,
  cStart: number,
  cStride: number,
  a: Float64Array,
  aStart: number,
  aStride: number,
  b: Float64Array,
  bStart: number,
  bStride: number,
  rows: number,
  columns: number,
  depth: number,
): void {
  if (depth <= 0) return;
  if (columns >= 16 && rows * columns * depth >= WORTH_PACKING) {
    const kernel = vectorKernel();
    if (kernel) {
      const sides = { c, cStart, cStride, a, aStart, aStride, b, bStart, bStride };
      subtractByVectors(kernel, sides, rows, columns, depth);
      return;
    }
  }
  const fullRows = rows - (rows % 4);
  const fullColumns = columns - (columns % 4);
  for (let i = 0; i < fullRows; i += 4) {
    for (let j = 0; j < fullColumns; j += 4) {
      subtractTile(
        c,
        cStart + i * cStride + j,
        cStride,
        a,
        aStart + i * aStride,
        aStride,
        b,
        bStart + j * bStride,
        bStride,
        depth,
      );
    }
  }
  for (let i = 0; i < rows; i++) {
    const from = i < fullRows ? fullColumns : 0;
    for (let j = from; j < columns; j++) {
      const aRow = aStart + i * aStride;
      const bRow = bStart + j * bStride;
      let sum = 0;
      for (let k = 0; k < depth; k++) sum += (a[aRow + k] as number) * (b[bRow + k] as number);
      const at = cStart + i * cStride + j;
      c[at] = (c[at] as number) - sum;
    }
  }
}

function subtractTile(
  c: Float64Array,
  cStart: number,
  cStride: number,
  a: Float64Array,
  aStart: number,
  aStride: number,
  b: Float64Array,
  bStart: number,
  bStride: number,
  depth: number,
): void {
  let s00 = 0;
  let s01 = 0;
  let s02 = 0;
  let s03 = 0;
  let s10 = 0;
  let s11 = 0;
  let s12 = 0;
  let s13 = 0;
  let s20 = 0;
  let s21 = 0;
  let s22 = 0;
  let s23 = 0;
  let s30 = 0;
  let s31 = 0;
  let s32 = 0;
  let s33 = 0;
  let a0 = aStart;
  let a1 = aStart + aStride;
  let a2 = a1 + aStride;
  let a3 = a2 + aStride;
  let b0 = bStart;
  let b1 = bStart + bStride;
  let b2 = b1 + bStride;
  let b3 = b2 + bStride;
  const end = aStart + depth;
  while (a0 < end) {
    const x0 = a[a0++] as number;
    const x1 = a[a1++] as number;
    const x2 = a[a2++] as number;
    const x3 = a[a3++] as number;
    const y0 = b[b0++] as number;
    const y1 = b[b1++] as number;
    const y2 = b[b2++] as number;
    const y3 = b[b3++] as number;
    s00 += x0 * y0;
    s01 += x0 * y1;
    s02 += x0 * y2;
    s03 += x0 * y3;
    s10 += x1 * y0;
    s11 += x1 * y1;
    s12 += x1 * y2;
    s13 += x1 * y3;
    s20 += x2 * y0;
    s21 += x2 * y1;
    s22 += x2 * y2;
    s23 += x2 * y3;
    s30 += x3 * y0;
    s31 += x3 * y1;
    s32 += x3 * y2;
    s33 += x3 * y3;
  }
  subtractFour(c, cStart, s00, s01, s02, s03);
  subtractFour(c, cStart + cStride, s10, s11, s12, s13);
  subtractFour(c, cStart + 2 * cStride, s20, s21, s22, s23);
  subtractFour(c, cStart + 3 * cStride, s30, s31, s32, s33);
}

function subtractFour(c: Float64Array, at: number, s0: number, s1: number, s2: number, s3: number): void {
  c[at] = (c[at] as number) - s0;
  c[at + 1] = (c[at + 1] as number) - s1;
  c[at + 2] = (c[at + 2] as number) - s2;
  c[at + 3] = (c[at + 3] as number) - s3;
}
