import { addDays, type CalendarDate } from '@/lib/growing/calendar-date';
import { expectFirstHarvest } from '@/lib/growing/due/expect-first-harvest';
import { goneQuiet } from '@/lib/growing/due/gone-quiet';
import { nextFlush } from '@/lib/growing/due/next-flush';
import { nothingExpected } from '@/lib/growing/expected-days';
import { quietDays } from '@/lib/growing/quiet-days';
import type { DayRange } from '@/lib/growing/species-default';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import type { BatchFacts, SiteDates } from '../comparison/batch-facts';
import type { LastEntries } from './read-last-entries';

/** Days that a network expects of a species in a container. */
export type ExpectedHarvests = {
  readonly firstHarvest: DayRange | null;
  readonly betweenFlushes: DayRange | null;
};

const later = (a: CalendarDate, b: CalendarDate | null) => (b !== null && b > a ? b : a);

/**
 * Of open batches those that could have gone quiet by their kept facts alone: what else was written can only make it later.
 * Days are reckoned once for each container and date, not for each of ten thousand batches.
 */
export function maybeQuiet(batches: readonly BatchFacts[], today: SiteDates): BatchFacts[] {
  const lastDays = new Map<string, CalendarDate>();
  const silentSince = (container: ContainerKind, day: CalendarDate) => {
    const known = lastDays.get(container + day) ?? addDays(day, -quietDays(container));
    lastDays.set(container + day, known);
    return known;
  };
  return batches.filter(({ siteId, closedOn, voided, containerKind, inoculatedOn, lastInspectedOn }) => {
    const day = today.get(siteId);
    if (day === undefined || closedOn !== null || voided) return false;
    return later(inoculatedOn, lastInspectedOn) <= silentSince(containerKind, day);
  });
}

/** The day from which an open batch is quiet, by the network's days alone and not by the site's own; null while it is not. */
export function quietFrom(
  { containerKind: container, inoculatedOn, secondLife }: BatchFacts,
  { enteredOn, pinsOn, pickedOn }: LastEntries,
  expected: ExpectedHarvests | undefined,
  today: CalendarDate,
): CalendarDate | null {
  const batch = {
    ...{ today, container, inoculatedOn, secondLife, pinsOn, pickedOn },
    enteredOn: later(inoculatedOn, enteredOn),
    ...{ liveUnits: 1, judgedOn: null, inspectedOn: null, colonisedOn: null },
    expected: { ...nothingExpected, ...expected },
    own: { colonised: null, firstHarvest: null },
  };
  const awaited = pickedOn === null ? expectFirstHarvest(batch) : nextFlush(batch);
  return goneQuiet(batch, awaited)?.from ?? null;
}
