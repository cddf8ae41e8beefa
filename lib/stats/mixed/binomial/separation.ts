import type { LogisticRegression } from './logistic-regression';
import type { BinomialRows } from './logistic-rows';

/** Beyond this log odds a row without (or with nothing but) events may be running away. */
const SUSPICIOUS = 8;
/** Movements below this share of the fastest row's count as standing still. */
const STILL = 1e-3;

/**
 * Finds separation: a direction of the coefficients along which no row's likelihood falls and some rise for ever, so that
 * the likelihood has no maximum (Albert & Anderson 1984, Biometrika 71, 1-10, from memory). Rows with some but not all
 * events must stand still along it, rows without events must not rise, rows of nothing but events not fall. The
 * candidate is the direction in which Newton's method still moves.
 *
 * A random intercept changes nothing in this: along such a direction the likelihood rises for every value of the
 * random effects.
 *
 * @returns the rows that run away (their probability tends to 0 or 1), or undefined when there is no separation.
 */
export function separatedRows(
  columns: readonly Float64Array[],
  rows: BinomialRows,
  regression: LogisticRegression,
): Uint8Array | undefined {
  const n = rows.events.length;
  const pure = (i: number) => rows.events[i] === 0 || rows.events[i] === rows.trials[i];
  let suspicious = false;
  for (let i = 0; i < n && !suspicious; i++) {
    suspicious = pure(i) && Math.abs(regression.eta[i] as number) > SUSPICIOUS;
  }
  if (!suspicious) return undefined;
  const movement = new Float64Array(n);
  for (const [k, column] of columns.entries()) {
    const value = regression.lastStep[k] as number;
    for (let i = 0; i < n; i++) movement[i] = (movement[i] as number) + value * (column[i] as number);
  }
  const fastest = movement.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  // A converged fit no longer moves; a runaway one moves by about 1 a step.
  if (!(fastest > 1e-3)) return undefined;
  const away = new Uint8Array(n);
  let found = false;
  for (let i = 0; i < n; i++) {
    const share = (movement[i] as number) / fastest;
    if (Math.abs(share) <= STILL) continue;
    const allowed = share < 0 ? rows.events[i] === 0 : rows.events[i] === rows.trials[i];
    if (!allowed) return undefined;
    if (Math.abs(share) > 0.05) {
      away[i] = 1;
      found = true;
    }
  }
  return found ? away : undefined;
}
