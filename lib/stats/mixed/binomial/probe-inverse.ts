import type { RandomSystem } from '../random-system';
import type { InverseParts } from './inverse-parts';

/** Random signs per probe; the error falls with the square root of probes times random effects. */
const PROBES = 4;

/**
 * A^-1 near a point where it has a factor, without a new one: linear systems by iterative refinement with the old factor, the
 * diagonal and the leverages by averages over vectors z of random signs, E z_j (A^-1 z)_j = (A^-1)_jj (Hutchinson 1990,
 * from memory). The signs are always the same ones, so that differences between neighbouring points are good to about
 * 1 / sqrt(2 x random effects) although each value alone is not.
 */
export class ProbeInverse {
  private readonly signs: readonly Float64Array[];
  private readonly centre: readonly Float64Array[];

  /** @param system factored at the centre. */
  constructor(private readonly system: RandomSystem) {
    let state = 1;
    this.signs = Array.from({ length: PROBES }, () =>
      Float64Array.from({ length: system.size }, () => {
        // Lehmer's generator (Park & Miller 1988, from memory): signs need no better one.
        state = (state * 48_271) % 2_147_483_647;
        return state < 1_073_741_824 ? 1 : -1;
      }),
    );
    this.centre = this.signs.map((sign) => {
      const x = sign.slice();
      system.solve(x);
      return x;
    });
  }

  /** The parts at the scale the system is set to and the given weights. */
  at(weights: Float64Array): InverseParts {
    const { system, signs } = this;
    const solutions = this.centre.map((x, probe) =>
      this.refined(x.slice(), signs[probe] as Float64Array, weights),
    );
    return {
      leverages: () => {
        const sum = new Float64Array(system.rowCount);
        for (let probe = 0; probe < PROBES; probe++) {
          const one = new Float64Array(system.rowCount);
          const other = new Float64Array(system.rowCount);
          system.addRandomPart(signs[probe] as Float64Array, one);
          system.addRandomPart(solutions[probe] as Float64Array, other);
          for (let i = 0; i < sum.length; i++) {
            sum[i] = (sum[i] as number) + ((one[i] as number) * (other[i] as number)) / PROBES;
          }
        }
        return sum;
      },
      diagonal: (j) => {
        let sum = 0;
        for (let probe = 0; probe < PROBES; probe++) {
          sum += (signs[probe]?.[j] as number) * (solutions[probe]?.[j] as number);
        }
        return sum / PROBES;
      },
      solve: (x) => {
        const b = x.slice();
        system.solve(x);
        this.refined(x, b, weights);
      },
    };
  }

  /** One step of refinement of A x = b: its error is the square of the (small) relative change of A. */
  private refined(x: Float64Array, b: Float64Array, weights: Float64Array): Float64Array {
    const { system } = this;
    const rows = new Float64Array(system.rowCount);
    system.addRandomPart(x, rows);
    for (let i = 0; i < rows.length; i++) rows[i] = (rows[i] as number) * (weights[i] as number);
    const rest = new Float64Array(system.size);
    system.scaledCrossProduct(rows, rest);
    for (let j = 0; j < rest.length; j++) rest[j] = (b[j] as number) - (rest[j] as number) - (x[j] as number);
    system.solve(rest);
    for (let j = 0; j < x.length; j++) x[j] = (x[j] as number) + (rest[j] as number);
    return x;
  }
}
