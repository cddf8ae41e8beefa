import { elementAt } from '../element-at';
import { addPowerSums } from './power-sums';

/** So many factors are multiplied one by one; from there on they lie close enough together to be taken in blocks. */
const ONE_BY_ONE = 16;
/** A block reaches this far from its middle, as a share of the middle. */
const REACH = 1 / 8;
/** Of the series of log(1 + x) with x up to REACH: what comes after is below the last digit. */
const TERMS = 16;

/** The factors from `from` up to and without `to`, each as often as counts reach it. */
type Stretch = { readonly from: number; readonly to: number; readonly times: number };

type Block = {
  readonly middle: number;
  /** How many factors, each as often as counts reach it. */
  readonly weight: number;
  /** Of the powers 1 to TERMS, highest last. */
  readonly series: Float64Array;
};

/**
 * The sum over counts of sum_{j<count} log(base + j step), as a function of base > 0 and step >= 0, to the last digits.
 *
 * A factor that w counts reach is in the sum w times. Factors of a block about its middle c are (base + c step) times
 * 1 + t q, with t = (j - c) / c at most 1/8 and q = c step / (base + c step) below 1, so that the sum over a block is
 * one logarithm and a power series in q whose coefficients hang on the counts alone. Blocks grow with j: the number of
 * logarithms grows with the logarithm of the largest count, whatever the number of counts.
 *
 * @param counts whole numbers, 0 or more. `step` and 1 / `base` may reach 10^18, where the first factors' product ends.
 */
export function risingLogsOf(counts: readonly number[]): (base: number, step: number) => number {
  const stretches = stretchesOf(counts);
  const largest = stretches.at(-1)?.to ?? 0;
  const single = stretches
    .filter(({ from }) => from < ONE_BY_ONE)
    .map((stretch) => ({ ...stretch, to: Math.min(stretch.to, ONE_BY_ONE) }));
  const blocks: Block[] = [];
  for (let from = ONE_BY_ONE; from < largest; ) {
    const to = Math.min(largest, Math.floor((from * (1 + REACH)) / (1 - REACH)) + 1);
    blocks.push(blockOf(stretches, from, to));
    from = to;
  }
  // The innermost loops of the interval: places are read as they are, which is several times faster than by elementAt.
  return (base, step) => {
    let total = 0;
    for (const { from, to, times } of single) {
      let product = 1;
      for (let j = from; j < to; j += 1) product *= base + j * step;
      total += times * Math.log(product);
    }
    for (const { middle, weight, series } of blocks) {
      const centre = base + middle * step;
      const q = (middle * step) / centre;
      const square = q * q;
      // Two chains, of odd and of even powers, which a processor works at side by side.
      let odd = 0;
      let even = 0;
      for (let term = TERMS - 2; term >= 0; term -= 2) {
        odd = odd * square + (series[term] ?? 0);
        even = even * square + (series[term + 1] ?? 0);
      }
      total += weight * Math.log(centre) + (odd + even * q) * q;
    }
    return total;
  };
}

function stretchesOf(counts: readonly number[]): Stretch[] {
  const sorted = Float64Array.from(counts).sort();
  const stretches: Stretch[] = [];
  let from = 0;
  sorted.forEach((to, index) => {
    if (to === from) return;
    stretches.push({ from, to, times: sorted.length - index });
    from = to;
  });
  return stretches;
}

function blockOf(stretches: readonly Stretch[], from: number, to: number): Block {
  const middle = (from + to - 1) / 2;
  const series = new Float64Array(TERMS);
  let weight = 0;
  for (let at = stretches.findIndex((stretch) => stretch.to > from); at < stretches.length; at += 1) {
    const stretch = elementAt(stretches, at);
    if (stretch.from >= to) break;
    const [start, end] = [Math.max(from, stretch.from), Math.min(to, stretch.to)];
    weight += stretch.times * (end - start);
    addPowerSums(series, stretch.times, start, end, middle);
  }
  for (let term = 0; term < TERMS; term += 1)
    series[term] = (elementAt(series, term) * (term % 2 === 0 ? 1 : -1)) / (term + 1);
  return { middle, weight, series };
}
