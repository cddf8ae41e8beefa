/** Why a figure cannot be given. The code is stable (screens translate it); the explanation is plain English. */
export type CannotReason =
  | 'no-data'
  | 'too-few-clusters'
  | 'too-few-observations'
  | 'no-variation'
  | 'zero-denominator'
  | 'separation'
  | 'not-identifiable'
  | 'did-not-converge'
  | 'out-of-range';

/** A value the data cannot give, with a reason that a reader can act on. Never NaN, 0 or null instead. */
export type CannotCompute = {
  readonly kind: 'cannot-compute';
  readonly reason: CannotReason;
  readonly explanation: string;
};

/** Confidence limits at `level` (0-1, for instance 0.95), in the units of the estimate. */
export type Interval = {
  readonly kind: 'interval';
  readonly low: number;
  readonly high: number;
  readonly level: number;
  readonly method: string;
};

export function cannotCompute(reason: CannotReason, explanation: string): CannotCompute {
  return { kind: 'cannot-compute', reason, explanation };
}

/**
 * Thrown for arguments that no data set can have (NaN, negative counts, more events than trials).
 * Bad arguments are a caller's mistake and name the argument; thin data is a `CannotCompute` answer.
 */
export class ArgumentError extends Error {
  override readonly name = 'ArgumentError';
  constructor(
    readonly argument: string,
    problem: string,
  ) {
    super(`${argument}: ${problem}`);
  }
}
