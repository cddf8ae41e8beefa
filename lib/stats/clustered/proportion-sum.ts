/** Equal steps of asin(sqrt(proportion)) from 0 to pi/2, and on which of them a likelihood peaks. */
export type Steps = { readonly cells: number; readonly peak: number };

export type ProportionSum = {
  /** Logarithm of the mean of the likelihood over the steps. */
  readonly logMean: number;
  /** Where to begin for a likelihood like this one. */
  readonly next: Steps;
};

const FEWEST_CELLS = 16;
const MOST_CELLS = 2 ** 24;
/** Log-likelihood so far below the peak adds nothing that is seen. */
const DEPTH = 20;

/**
 * The likelihood of a proportion averaged under Jeffreys' weight, which is even in asin(sqrt(proportion)).
 *
 * Its logarithm is concave in the proportion and so has one peak: it is walked from a guess to its peak and away on both
 * sides until it has died away; where fewer than `fewest` steps lie between, the steps are halved. Middles of equal steps
 * add up a smooth hump that dies away or is even at its ends to far more digits than their number suggests: 12 give nine, 5
 * give one.
 *
 * @param logLikelihood of a proportion above 0 and below 1.
 * @param fewest steps that the hump is to hold, from 5 to 16.
 */
export function proportionSum(
  logLikelihood: (proportion: number) => number,
  from: Steps | undefined,
  fewest: number,
): ProportionSum {
  let { cells, peak } = from ?? { cells: FEWEST_CELLS, peak: FEWEST_CELLS / 2 };
  for (;;) {
    const hump = humpOf(logLikelihood, cells, peak);
    if (hump.values.length >= fewest || cells >= MOST_CELLS) {
      const sum = hump.values.reduce((total, value) => total + Math.exp(value - hump.top), 0);
      const wide = hump.values.length > 2 * fewest + 2 && cells > FEWEST_CELLS;
      return {
        logMean: hump.top + Math.log(sum / cells),
        next: wide ? { cells: cells / 2, peak: Math.floor(hump.peak / 2) } : { cells, peak: hump.peak },
      };
    }
    const finer = hump.values.length < fewest / 2 ? 4 : 2;
    peak = hump.peak * finer + finer / 2;
    cells *= finer;
  }
}

/** The values that lie less than DEPTH below the highest, and where that is. */
function humpOf(logLikelihood: (proportion: number) => number, cells: number, start: number) {
  const values: number[] = [];
  let top = Number.NEGATIVE_INFINITY;
  let peak = start;
  const walk = (first: number, step: 1 | -1) => {
    let before = Number.NEGATIVE_INFINITY;
    for (let cell = first; cell >= 0 && cell < cells; cell += step) {
      const value = logLikelihood(Math.sin(((cell + 0.5) / cells) * (Math.PI / 2)) ** 2);
      if (value < before && value < top - DEPTH) return;
      if (value > top) [top, peak] = [value, cell];
      values.push(value);
      before = value;
    }
  };
  walk(start, 1);
  walk(start - 1, -1);
  return { values: values.filter((value) => value >= top - DEPTH), top, peak };
}
