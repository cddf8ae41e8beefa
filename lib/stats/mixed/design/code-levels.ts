import { ArgumentError } from '../../outcome';

export type CodedValues = {
  readonly levels: readonly string[];
  /** Index into `levels`, row by row. */
  readonly codes: Int32Array;
};

/**
 * Turns labels into level numbers.
 *
 * @param argument the name to put in errors.
 * @param levels the order wanted; by default the labels present, sorted by code unit (the same on every machine).
 * @throws ArgumentError for an empty label, a label twice in `levels`, or a value that `levels` does not hold.
 */
export function codeLevels(
  argument: string,
  values: readonly string[],
  levels?: readonly string[],
): CodedValues {
  const index = new Map<string, number>();
  const codes = new Int32Array(values.length);
  if (levels) {
    for (const level of levels) {
      if (index.has(level)) throw new ArgumentError(`${argument}.levels`, `names "${level}" twice`);
      index.set(level, index.size);
    }
    for (let row = 0; row < values.length; row++) {
      const code = index.get(values[row] as string);
      if (code === undefined) {
        throw new ArgumentError(`${argument}.values`, `"${values[row]}" is none of the levels`);
      }
      codes[row] = code;
    }
    return { levels: [...levels], codes };
  }
  for (let row = 0; row < values.length; row++) {
    const value = values[row];
    if (typeof value !== 'string' || value === '') {
      throw new ArgumentError(`${argument}.values`, `row ${row + 1} has no label`);
    }
    let code = index.get(value);
    if (code === undefined) {
      code = index.size;
      index.set(value, code);
    }
    codes[row] = code;
  }
  const found = [...index.keys()];
  const sorted = [...found].sort();
  const rank = new Map(sorted.map((level, at) => [level, at]));
  const recode = Int32Array.from(found, (level) => rank.get(level) as number);
  for (let row = 0; row < codes.length; row++) codes[row] = recode[codes[row] as number] as number;
  return { levels: sorted, codes };
}
