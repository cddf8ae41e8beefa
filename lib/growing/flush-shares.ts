import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';

/** Fresh mass of one flush; several weighings of a flush are added up. */
export type FlushMass = { readonly flush: number; readonly grams: number };

/**
 * Share of each flush in the total fresh mass, percent, in order of flush number; they add up to 100.
 * 166, 131.6 and 49.66 g give 47.8, 37.9 and 14.3 (ARGAW23). By mass, never by number of fruit bodies.
 */
export function flushShares(
  weighings: readonly FlushMass[],
): Answer<readonly { readonly flush: number; readonly grams: number; readonly sharePercent: number }[]> {
  const byFlush = new Map<number, number>();
  for (const { flush, grams } of weighings) {
    const refused = refuseNegative({ grams });
    if (refused) return refused;
    byFlush.set(flush, (byFlush.get(flush) ?? 0) + grams);
  }
  const total = [...byFlush.values()].reduce((sum, grams) => sum + grams, 0);
  if (total === 0) return cannotCompute('no-harvest-yet');
  return answer(
    [...byFlush.entries()]
      .sort(([first], [second]) => first - second)
      .map(([flush, grams]) => ({ flush, grams, sharePercent: (100 * grams) / total })),
  );
}
