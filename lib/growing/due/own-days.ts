import type { OwnDays } from './batch-facts';

/** With fewer batches of its own a site is told the network's days. Our choice. */
export const enoughOwnBatches = 5;
/** Older ones say little of the present spawn, rooms and hands. Our choice. */
export const mostOwnBatches = 8;

/**
 * What a site's own batches took, from whole days of each, the latest batch first: the fastest, the slowest and the
 * median of the last eight; null with fewer than five. Batches that never got there are not in it.
 */
export function ownDays(latestFirst: readonly number[]): OwnDays | null {
  const days = latestFirst.slice(0, mostOwnBatches).sort((a, b) => a - b);
  const [from] = days;
  const to = days.at(-1);
  if (days.length < enoughOwnBatches || from === undefined || to === undefined) return null;
  const middle = (days.length - 1) / 2;
  const median = ((days[Math.floor(middle)] ?? from) + (days[Math.ceil(middle)] ?? to)) / 2;
  return { from, to, median, batches: days.length };
}
