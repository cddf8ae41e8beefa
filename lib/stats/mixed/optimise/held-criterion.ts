import type { Criterion, Derivatives } from './criterion';

/** A criterion with one coordinate held at a value: what a profile of that coordinate is minimised over. */
export class HeldCriterion implements Criterion {
  readonly dimension: number;
  heldValue = 0;

  constructor(
    private readonly whole: Criterion,
    private readonly held: number,
  ) {
    this.dimension = whole.dimension - 1;
  }

  value(x: Float64Array): number {
    return this.whole.value(this.complete(x));
  }

  derivatives(): Derivatives {
    const { gradient, curvature } = this.whole.derivatives();
    const size = this.whole.dimension;
    const keep = (entry: number) => entry !== this.held;
    return {
      gradient: gradient.filter((_, i) => keep(i)),
      curvature: curvature.filter((_, at) => keep(Math.floor(at / size)) && keep(at % size)),
    };
  }

  /** The full point for the free coordinates x. */
  private complete(x: Float64Array): Float64Array {
    return Float64Array.of(...x.subarray(0, this.held), this.heldValue, ...x.subarray(this.held));
  }
}
