import type { BesideSums, DaysHeld } from './beside-sums';
import { holdsDay } from './beside-sums';
import { quartersBeyond } from './quarters-held';

/** Of so many kinds of containers a process remembers what sums cannot tell. */
const most = 12;

const known = new Map<string, BesideSums>();

/** What is remembered and holds the young batches of a question's day; undefined where nothing does. */
export function besideRemembered(key: string, wanted: DaysHeld): BesideSums | undefined {
  const beside = known.get(key);
  return beside !== undefined && holdsDay(beside, wanted) ? beside : undefined;
}

/** Remembers it, unless somebody who read at the same time has remembered a later state that holds as much. */
export function rememberBeside(key: string, beside: BesideSums): void {
  const other = known.get(key);
  if (beside.version === undefined) return;
  const holdsMore =
    other !== undefined &&
    holdsDay(other, beside) &&
    quartersBeyond(beside.quarters, other.quarters).length === 0;
  if (holdsMore && other.version !== undefined && other.version > beside.version) return;
  known.delete(key);
  known.set(key, beside);
  const [oldest] = known.keys();
  if (known.size > most && oldest !== undefined) known.delete(oldest);
}

/** Forgets everything, as in a process that has just started. */
export function forgetBeside(): void {
  known.clear();
}
