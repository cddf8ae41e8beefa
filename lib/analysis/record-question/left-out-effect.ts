import type { ContainerKind } from '@/lib/growing/vocabulary';
import type { JudgedBatch } from '../comparison/judged-batch';
import type { LeftOutReason } from '../shown-figure';

/** What missing records do to the contamination rate and the yield of one kind of container. */
export type LeftOutEffect = {
  readonly container: ContainerKind;
  /** Batches whose window has passed. */
  readonly due: number;
  readonly uninspected: number;
  /** Of those due; null where none is. */
  readonly uninspectedPercent: number | null;
  readonly uninspectedUnits: number;
  /** Percent of all units that are due: as counted, and if none or all of the units nobody looked at were contaminated. */
  readonly rate: { readonly counted: number; readonly low: number; readonly high: number } | null;
  /** Batches that have reached the day of their yield. */
  readonly yieldDue: number;
  readonly yieldLeftOut: number;
  /** Of those that have reached it; null where none has. */
  readonly yieldLeftOutPercent: number | null;
};

const percentOf = (part: number, whole: number) => (whole === 0 ? null : (100 * part) / whole);

const yieldMissing: ReadonlySet<LeftOutReason> = new Set([
  'no-dry-mass',
  'no-area',
  'not-weighed',
  'harvest-unknown',
]);

/**
 * How far the rate could lie from what is shown, whatever happened in the batches nobody looked at: the share of all units
 * that are due, with none more of theirs contaminated than were found, and with all that were not lost otherwise. These are
 * bounds, not an interval: nothing is assumed (Manski 1990, American Economic Review 80:319-323, citation from memory).
 */
export function leftOutEffect(container: ContainerKind, all: readonly JudgedBatch[]): LeftOutEffect {
  const batches = all.filter(({ facts }) => facts.containerKind === container && !facts.voided);
  const seen = { units: 0, contaminated: 0, batches: 0 };
  const unseen = { units: 0, contaminated: 0, clean: 0, batches: 0 };
  for (const { facts, contamination } of batches) {
    if (contamination.kind === 'counted') {
      seen.batches += 1;
      seen.units += contamination.units;
      seen.contaminated += contamination.byWindowEnd;
    } else if (contamination.reason === 'not-inspected') {
      unseen.batches += 1;
      unseen.units += facts.unitCount;
      unseen.contaminated += facts.contaminatedByWindowEnd;
      unseen.clean += facts.lostClean;
    }
  }
  const units = seen.units + unseen.units;
  const yieldReasons = batches.flatMap(({ yield: given }) =>
    given.kind === 'left-out' ? [given.reason] : [],
  );
  const yieldLeftOut = yieldReasons.filter((reason) => yieldMissing.has(reason)).length;
  const due = seen.batches + unseen.batches;
  const yieldDue = batches.length - yieldReasons.length + yieldLeftOut;
  return {
    container,
    due,
    uninspected: unseen.batches,
    uninspectedPercent: percentOf(unseen.batches, due),
    uninspectedUnits: unseen.units,
    rate:
      seen.units === 0
        ? null
        : {
            counted: (100 * seen.contaminated) / seen.units,
            low: (100 * (seen.contaminated + unseen.contaminated)) / units,
            high: (100 * (seen.contaminated + unseen.units - unseen.clean)) / units,
          },
    yieldDue,
    yieldLeftOut,
    yieldLeftOutPercent: percentOf(yieldLeftOut, yieldDue),
  };
}
