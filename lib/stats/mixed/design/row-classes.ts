/** Rows that the model cannot tell apart, found by splitting on one key after another. */
export type RowClasses = {
  readonly count: number;
  /** Class of each row, numbered by first appearance. */
  readonly classOf: Int32Array;
  /** The first row of each class. */
  readonly representative: Int32Array;
};

/**
 * Groups identical rows, so that a model works on each distinct combination once.
 *
 * @param keys level numbers or covariate values, all of `rowCount` rows. Two rows share a class when every key is equal.
 */
export function rowClasses(keys: readonly ArrayLike<number>[], rowCount: number): RowClasses {
  let classOf = new Int32Array(rowCount);
  let count = rowCount > 0 ? 1 : 0;
  for (const key of keys) {
    if (count === rowCount) break;
    const split = splitBy(classOf, count, key);
    classOf = split.classOf;
    count = split.count;
  }
  if (count === rowCount) {
    const identity = new Int32Array(rowCount);
    for (let row = 0; row < rowCount; row++) identity[row] = row;
    return { count, classOf: identity, representative: identity };
  }
  const representative = new Int32Array(count).fill(-1);
  for (let row = 0; row < rowCount; row++) {
    const own = classOf[row] as number;
    if (representative[own] === -1) representative[own] = row;
  }
  return { count, classOf, representative };
}

function splitBy(classOf: Int32Array, count: number, key: ArrayLike<number>) {
  const codes = denseCodes(key);
  const found = new Map<number, number>();
  const next = new Int32Array(classOf.length);
  for (let row = 0; row < next.length; row++) {
    const pair = (codes[row] as number) * count + (classOf[row] as number);
    let own = found.get(pair);
    if (own === undefined) {
      own = found.size;
      found.set(pair, own);
    }
    next[row] = own;
  }
  return { classOf: next, count: found.size };
}

/** Level numbers as they are; other numbers replaced by the order in which each value first appears. */
function denseCodes(key: ArrayLike<number>): ArrayLike<number> {
  if (key instanceof Int32Array) return key;
  const found = new Map<number, number>();
  const codes = new Int32Array(key.length);
  for (let row = 0; row < codes.length; row++) {
    const value = key[row] as number;
    let code = found.get(value);
    if (code === undefined) {
      code = found.size;
      found.set(value, code);
    }
    codes[row] = code;
  }
  return codes;
}
