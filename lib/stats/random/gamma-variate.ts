import { ArgumentError } from '../outcome';

/**
 * One gamma variate of the given shape and scale 1, by Marsaglia & Tsang (2000, ACM Transactions on
 * Mathematical Software 26, 363-372, from memory). A shape below 1 is drawn at shape + 1 and multiplied by
 * U^(1/shape).
 *
 * @param shape above 0.
 * @param uniform draws from [0, 1).
 * @param normal draws standard normals.
 */
export function gammaVariate(shape: number, uniform: () => number, normal: () => number): number {
  if (!(shape > 0 && Number.isFinite(shape))) throw new ArgumentError('shape', 'must be above 0');
  if (shape < 1) return gammaVariate(shape + 1, uniform, normal) * (1 - uniform()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = normal();
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    const logUniform = Math.log(1 - uniform());
    if (logUniform < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}
