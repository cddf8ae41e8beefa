import { type Answer, answer, cannotCompute } from './answer';
import type { FindingActionKind } from './vocabulary';

/** Units taken out of a batch for a reason: contaminated ones that are gone, or other losses. */
export type UnitsByAction = { readonly units: number; readonly action: FindingActionKind };

const gone: ReadonlySet<FindingActionKind> = new Set(['discarded', 'buried']);

/** Whether an action leaves the unit standing: a contaminated unit may still be cropped. */
export function leavesUnitStanding(action: FindingActionKind): boolean {
  return !gone.has(action);
}

/**
 * Units still standing: inoculated - contaminated units discarded or buried - units lost for other causes -
 * units moved on to a second life. `contaminated` lists each unit once, under the last thing done with it.
 * A unit contaminated and then lost otherwise is listed in both places by its records; pass `lostUnits` without it.
 */
export function liveUnits(
  inoculatedUnits: number,
  contaminated: readonly UnitsByAction[],
  lostUnits: number,
  movedUnits = 0,
): Answer<number> {
  const removed = contaminated
    .filter(({ action }) => !leavesUnitStanding(action))
    .reduce((sum, { units }) => sum + units, 0);
  const live = inoculatedUnits - removed - lostUnits - movedUnits;
  if (!Number.isInteger(live) || inoculatedUnits < 1) {
    return cannotCompute('no-inoculated-units', { inoculatedUnits: String(inoculatedUnits) });
  }
  return live < 0
    ? cannotCompute('more-than-inoculated', { removedUnits: inoculatedUnits - live, inoculatedUnits })
    : answer(live);
}
