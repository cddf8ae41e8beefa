import { MEMORY_LENGTH, TILE_SIDE, type VectorKernel } from './vector-kernel';

/** Three matrices inside flat arrays; see `subtractProducts`. */
type ProductSides = {
  readonly c: Float64Array;
  readonly cStart: number;
  readonly cStride: number;
  readonly a: Float64Array;
  readonly aStart: number;
  readonly aStride: number;
  readonly b: Float64Array;
  readonly bStart: number;
  readonly bStride: number;
};

/** Rows of either factor and inner length that are packed at a time: both together stay in the processor's cache. */
const PANEL = 96;
const DEPTH = 256;
const TILE = TILE_SIDE;
const A = 0;
const B = PANEL * DEPTH;
const C = 2 * PANEL * DEPTH;
if (C + TILE * PANEL > MEMORY_LENGTH)
  throw new Error('the panels do not fit into the memory of the vector kernel');

/**
 * What `subtractProducts` does, by the vector unit: panels of both factors are copied so that the four numbers that are needed
 * together stand together, rows beyond the edge being 0. Sums are rounded in another order than without it.
 */
export function subtractByVectors(
  kernel: VectorKernel,
  { c, cStart, cStride, a, aStart, aStride, b, bStart, bStride }: ProductSides,
  rows: number,
  columns: number,
  depth: number,
): void {
  const { memory } = kernel;
  for (let k = 0; k < depth; k += DEPTH) {
    const deep = Math.min(DEPTH, depth - k);
    for (let j = 0; j < columns; j += PANEL) {
      const wide = Math.min(PANEL, columns - j);
      pack(memory, B, b, bStart + j * bStride + k, bStride, wide, deep);
      for (let i = 0; i < rows; i += PANEL) {
        const high = Math.min(PANEL, rows - i);
        pack(memory, A, a, aStart + i * aStride + k, aStride, high, deep);
        for (let row = 0; row < high; row += TILE) {
          kernel.multiply(A + row * deep, B, C, deep, Math.ceil(wide / TILE));
          const down = Math.min(TILE, high - row);
          for (let own = 0; own < down; own++) {
            subtractRow(c, cStart + (i + row + own) * cStride + j, memory, C + own * TILE, wide);
          }
        }
      }
    }
  }
}

/** Strips of four rows one after another, each column by column. */
function pack(
  memory: Float64Array,
  target: number,
  source: Float64Array,
  start: number,
  stride: number,
  rows: number,
  depth: number,
): void {
  let at = target;
  for (let row = 0; row < rows; row += TILE) {
    const first = start + row * stride;
    if (row + TILE <= rows) {
      const second = first + stride;
      const third = second + stride;
      const fourth = third + stride;
      for (let k = 0; k < depth; k++) {
        memory[at] = source[first + k] as number;
        memory[at + 1] = source[second + k] as number;
        memory[at + 2] = source[third + k] as number;
        memory[at + 3] = source[fourth + k] as number;
        at += TILE;
      }
    } else {
      for (let k = 0; k < depth; k++) {
        for (let i = 0; i < TILE; i++) {
          memory[at] = row + i < rows ? (source[first + i * stride + k] as number) : 0;
          at += 1;
        }
      }
    }
  }
}

/** Takes a row of products, four of each tile, off a row of C. */
function subtractRow(
  c: Float64Array,
  start: number,
  memory: Float64Array,
  products: number,
  columns: number,
): void {
  const whole = columns - (columns % TILE);
  let from = products;
  let at = start;
  for (const end = start + whole; at < end; at += TILE) {
    c[at] = (c[at] as number) - (memory[from] as number);
    c[at + 1] = (c[at + 1] as number) - (memory[from + 1] as number);
    c[at + 2] = (c[at + 2] as number) - (memory[from + 2] as number);
    c[at + 3] = (c[at + 3] as number) - (memory[from + 3] as number);
    from += TILE * TILE;
  }
  for (const end = start + columns; at < end; at += 1) {
    c[at] = (c[at] as number) - (memory[from] as number);
    from += 1;
  }
}
