/** One case of a reference file: an input, and what R (or exact arithmetic) gives for it. */
export type ReferenceCase = {
  readonly id: string;
  readonly source: string;
  readonly r_call: string;
  readonly input: unknown;
  readonly expected: unknown;
};

/** A reference file. Its `conventions` say which variance, which tail, and what `null` means. */
export type ReferenceFile = {
  readonly method: string;
  readonly description: string;
  readonly conventions: readonly string[];
  readonly tolerance: Readonly<Record<string, number>>;
  readonly cases: readonly ReferenceCase[];
};

/** A number passes when |computed - expected| <= absolute + relative * |expected|. */
export type Tolerance = { readonly relative: number; readonly absolute: number };

export type ReferenceContext = {
  readonly file: ReferenceFile;
  readonly caseId: string;
  /** The same as the case input handed to `run`. */
  readonly input: unknown;
  readonly rCall: string;
  /** Only to learn which keys are asked for; reading values from it would make the check worthless. */
  readonly expected: unknown;
};

/**
 * Runs the cases of one method through the library and answers in the shape of `expected`:
 * `null` where a quantity is not defined, numbers (including Infinity) elsewhere. Keys beyond the expected
 * ones are ignored; missing ones fail.
 */
export type ReferenceHandler = {
  /** The exact text of the file's `method`. */
  readonly method: string;
  run(caseInput: unknown, context: ReferenceContext): Record<string, unknown>;
  /** `path` is the dotted place of the number in `expected`, such as `comparisons.0.se`. */
  tolerance(path: string, file: ReferenceFile, context: ReferenceContext): Tolerance;
};

/** The entry `name` of the file's own tolerance table; a missing entry is a fault in the file, so it throws. */
export function statedTolerance(file: ReferenceFile, name: string): number {
  const value = file.tolerance[name];
  if (value === undefined) throw new Error(`${file.method}: tolerance has no entry ${name}`);
  return value;
}

/** The tolerance of files that state just `relative` and `absolute`. */
export function plainTolerance(_path: string, file: ReferenceFile): Tolerance {
  return { relative: statedTolerance(file, 'relative'), absolute: file.tolerance.absolute ?? 0 };
}
