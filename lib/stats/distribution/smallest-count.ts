/** Room for rounding when a cumulative probability should equal the one asked for. */
export const QUANTILE_FUZZ = 64 * Number.EPSILON;

/** The smallest whole number in low..high for which `reached` holds, which holds from some number on. */
export function smallestCount(low: number, high: number, reached: (k: number) => boolean): number {
  let least = low;
  let most = high;
  while (least < most) {
    const middle = least + Math.floor((most - least) / 2);
    if (reached(middle)) most = middle;
    else least = middle + 1;
  }
  return least;
}
