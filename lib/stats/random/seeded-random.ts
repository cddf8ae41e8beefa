import { ArgumentError } from '../outcome';
import { gammaVariate } from './gamma-variate';
import { sfc32 } from './sfc32';

/** A deterministic stream of pseudo-random numbers: the same seed gives the same numbers on every machine. */
export type SeededRandom = {
  /** Uniform on [0, 1), with 53 random bits. */
  next(): number;
  /** Standard normal (mean 0, standard deviation 1). */
  normal(): number;
  /** Uniform integer in 0 .. maxExclusive - 1, without modulo bias. */
  integer(maxExclusive: number): number;
  /** Binomial count of events among `n` trials of probability `p`. */
  binomial(n: number, p: number): number;
  /** Beta(a, b) on (0, 1); a, b > 0. */
  beta(a: number, b: number): number;
  /** Gamma with the given shape > 0 and scale 1. */
  gamma(shape: number): number;
  /** A shuffled copy (Fisher-Yates); the argument is left as it was. */
  shuffle<T>(items: readonly T[]): T[];
};

/**
 * Seeded generator for simulations and story data; not for secrets.
 *
 * Uniforms come from sfc32 (PractRand's small fast counter generator, 128 bits of state); normals by the polar
 * method (Marsaglia & Bray 1964, from memory); gammas by Marsaglia & Tsang (2000, from memory); betas as
 * G1 / (G1 + G2); binomials by counting n Bernoulli trials (n here is at most a few hundred).
 *
 * @param seed any integer of at most 53 bits.
 * @throws ArgumentError when the seed is no safe integer, or a parameter is outside its range.
 */
export function seededRandom(seed: number): SeededRandom {
  if (!Number.isSafeInteger(seed)) throw new ArgumentError('seed', 'must be a whole number');
  const bits = sfc32(seed);
  const next = () => ((bits() >>> 5) * 67_108_864 + (bits() >>> 6)) / 9_007_199_254_740_992;

  let spare: number | undefined;
  const normal = () => {
    if (spare !== undefined) {
      const value = spare;
      spare = undefined;
      return value;
    }
    for (;;) {
      const u = 2 * next() - 1;
      const v = 2 * next() - 1;
      const s = u * u + v * v;
      if (s === 0 || s >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(s)) / s);
      spare = v * scale;
      return u * scale;
    }
  };

  const integer = (maxExclusive: number) => {
    if (!Number.isSafeInteger(maxExclusive) || maxExclusive < 1) {
      throw new ArgumentError('maxExclusive', 'must be a whole number of at least 1');
    }
    return Math.floor(next() * maxExclusive);
  };

  const gamma = (shape: number) => gammaVariate(shape, next, normal);

  return {
    next,
    normal,
    integer,
    gamma,
    binomial(n, p) {
      if (!Number.isSafeInteger(n) || n < 0)
        throw new ArgumentError('n', 'must be a whole number of at least 0');
      if (!(p >= 0 && p <= 1)) throw new ArgumentError('p', 'must be between 0 and 1');
      let events = 0;
      for (let trial = 0; trial < n; trial += 1) if (next() < p) events += 1;
      return events;
    },
    beta(a, b) {
      const first = gamma(a);
      const second = gamma(b);
      // With both shapes tiny both gammas can underflow to 0; the limit is then a fair or weighted coin.
      if (first + second === 0) return next() < a / (a + b) ? 1 : 0;
      return first / (first + second);
    },
    shuffle<T>(items: readonly T[]) {
      const shuffled = [...items];
      for (let last = shuffled.length - 1; last > 0; last -= 1) {
        const other = integer(last + 1);
        [shuffled[last], shuffled[other]] = [shuffled[other] as T, shuffled[last] as T];
      }
      return shuffled;
    },
  };
}
