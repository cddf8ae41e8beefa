/** Rows and columns of a tile. */
export const TILE_SIDE = 4;

/** Inner products of 4 rows of A with rows of B by the processor's vector unit. */
export type VectorKernel = {
  /** Working memory: tiles of A and B are packed here, products are read here. */
  readonly memory: Float64Array;
  /**
   * For each of so many tiles t: memory[c + 16 t + 4 i + j] = sum over k < depth of
   * memory[a + 4 k + i] * memory[b + 4 (depth t + k) + j]. All three are positions in `memory`; depth and tiles at least 1.
   */
  multiply(a: number, b: number, c: number, depth: number, tiles: number): void;
};

const PAGE = 65_536;
const PAGES = 16;
/** Instructions of WebAssembly 2.0 (W3C), by their numbers in the binary format; all round alike on every machine. */
const [LOCAL_GET, LOCAL_SET, CONST, ADD] = [0x20, 0x21, 0x41, 0x6a] as const;
const [LOOP, BRANCH_IF, END, NO_RESULT] = [0x03, 0x0d, 0x0b, 0x40] as const;
const [VECTOR, LOAD, LOAD_TWICE, STORE] = [0xfd, 0x00, 0x0a, 0x0b] as const;
const MULTIPLY = [VECTOR, 0xf2, 0x01] as const;
const PLUS = [VECTOR, 0xf0, 0x01] as const;
/** Parameters, and where in A and at which step of the depth a tile has got to. */
const [A, B, C, DEPTH, TILES, AT, LEFT] = [0, 1, 2, 3, 4, 5, 6] as const;
/** Locals: two vectors of B's tile, one number of A's twice, nothing, and eight sums of two. */
const [LOW, HIGH, OWN, ZERO, SUMS] = [7, 8, 9, 10, 11] as const;
const VECTOR_LOCALS = 12;

/** The kernel, made at its first use; undefined where the runtime has no vector instructions. */
export function vectorKernel(): VectorKernel | undefined {
  made ??= make() ?? 'none';
  return made === 'none' ? undefined : made;
}

let made: VectorKernel | 'none' | undefined;

function make(): VectorKernel | undefined {
  const exports = exportsOf(moduleBytes());
  if (exports === undefined) return undefined;
  const { memory, multiply } = exports;
  if (!(memory instanceof WebAssembly.Memory) || typeof multiply !== 'function') return undefined;
  return {
    memory: new Float64Array(memory.buffer),
    multiply: (a, b, c, depth, tiles) => multiply(8 * a, 8 * b, 8 * c, depth, tiles),
  };
}

/** Undefined where there is no WebAssembly (`--jitless`), where it is forbidden, or where its address space is refused. */
function exportsOf(code: Uint8Array<ArrayBuffer>): WebAssembly.Exports | undefined {
  if (typeof WebAssembly === 'undefined' || !WebAssembly.validate(code)) return undefined;
  try {
    return new WebAssembly.Instance(new WebAssembly.Module(code)).exports;
  } catch (error) {
    if (error instanceof RangeError || error instanceof WebAssembly.CompileError) return undefined;
    throw error;
  }
}

/** The module in WebAssembly's binary format: one function over addresses in bytes, and its memory. */
function moduleBytes(): Uint8Array<ArrayBuffer> {
  const alignment = 3;
  const step = (local: number, by: number) => [LOCAL_GET, local, CONST, ...signed(by), ADD, LOCAL_SET, local];
  const repeat = (count: number) => [...step(count, -1), LOCAL_GET, count, BRANCH_IF, 0, END];
  const copy = (from: number, to: number) => [LOCAL_GET, from, LOCAL_SET, to];
  const sums = Array.from({ length: 2 * TILE_SIDE }, (_, at) => at);
  const products = Array.from({ length: TILE_SIDE }, (_, row) => [
    ...[LOCAL_GET, AT, VECTOR, LOAD_TWICE, alignment, 8 * row, LOCAL_SET, OWN],
    ...[LOW, HIGH].flatMap((half, at) => {
      const sum = SUMS + 2 * row + at;
      const product = [LOCAL_GET, OWN, LOCAL_GET, half, ...MULTIPLY];
      return [LOCAL_GET, sum, ...product, ...PLUS, LOCAL_SET, sum];
    }),
  ]).flat();
  const body = [
    ...[2, 2, 0x7f, VECTOR_LOCALS, 0x7b],
    ...[LOOP, NO_RESULT, ...copy(A, AT), ...copy(DEPTH, LEFT)],
    ...sums.flatMap((at) => copy(ZERO, SUMS + at)),
    ...[LOOP, NO_RESULT],
    ...[LOCAL_GET, B, VECTOR, LOAD, alignment, 0, LOCAL_SET, LOW],
    ...[LOCAL_GET, B, VECTOR, LOAD, alignment, 16, LOCAL_SET, HIGH],
    ...products,
    ...step(AT, 32),
    ...step(B, 32),
    ...repeat(LEFT),
    ...sums.flatMap((at) => [
      ...[LOCAL_GET, C, LOCAL_GET, SUMS + at, VECTOR, STORE, alignment],
      ...length(16 * at),
    ]),
    ...step(C, 128),
    ...repeat(TILES),
    END,
  ];
  const text = (name: string) => [name.length, ...new TextEncoder().encode(name)];
  const section = (number: number, content: readonly number[]) => [
    number,
    ...length(content.length),
    ...content,
  ];
  const integers = [0x7f, 0x7f, 0x7f, 0x7f, 0x7f];
  return Uint8Array.from([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, [1, 0x60, integers.length, ...integers, 0]),
    ...section(3, [1, 0]),
    ...section(5, [1, 0, PAGES]),
    ...section(7, [2, ...text('memory'), 2, 0, ...text('multiply'), 0, 0]),
    ...section(10, [1, ...length(body.length), ...body]),
  ]);
}

/** A whole number as WebAssembly writes it (LEB128): 7 bits a byte, the lowest first. */
function length(value: number): number[] {
  return value < 128 ? [value] : [128 + (value % 128), ...length(Math.floor(value / 128))];
}

/** A small whole number with a sign, as WebAssembly writes it: 7 bits a byte, the highest bit of the last one being the sign. */
function signed(value: number): number[] {
  return value >= -64 && value < 64 ? [value & 127] : [128 + (value & 127), ...signed(value >> 7)];
}

/** Numbers that `memory` holds. */
export const MEMORY_LENGTH = (PAGE * PAGES) / 8;
