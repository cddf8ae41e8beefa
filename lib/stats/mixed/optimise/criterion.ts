/** A smooth function to be minimised, with its gradient and a cheap guess at its curvature. */
export type Criterion = {
  readonly dimension: number;
  /** The value at x; Infinity where it cannot be computed. */
  value(x: Float64Array): number;
  /** Gradient and a symmetric, roughly right curvature (row-major) at the x of the last call of `value`. */
  derivatives(): Derivatives;
};

export type Derivatives = { readonly gradient: Float64Array; readonly curvature: Float64Array };
