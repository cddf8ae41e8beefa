import type { ContainerKind } from './vocabulary';
import { type PlausibilityQuestion, questionBe, questionWeighing } from './yield-plausibility';

/** A batch as far as the plausibility of a harvest goes; masses in grams. */
export type HarvestedBatch = {
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly liveUnits: number;
  /** Null where not known: then no biological efficiency is looked at. */
  readonly dryGrams: number | null;
  /** Fresh mass of the earlier harvests. */
  readonly earlierGrams: number;
};

// Common practice: fresh grams that one unit can give over its whole life, with a wide margin.
const mostGramsPerUnit: Readonly<Record<ContainerKind, number>> = {
  bag: 60_000,
  bucket: 60_000,
  tray: 60_000,
  block: 60_000,
  log: 200_000,
  bed: 2_000_000,
};

/** Whether the batch would have given more than its units can give in a whole life: refused, not asked about. */
export function isImpossibleHarvest(batch: HarvestedBatch, grams: number): boolean {
  return batch.earlierGrams + grams > mostGramsPerUnit[batch.containerKind] * batch.unitCount;
}

/** What to ask about a harvest so rare that a slip of the scale or of the decimal sign is likelier. */
export function questionHarvest(batch: HarvestedBatch, grams: number): readonly PlausibilityQuestion[] {
  const questions = [questionWeighing(grams, batch.liveUnits, batch.containerKind)];
  if (batch.dryGrams !== null && batch.dryGrams > 0 && batch.containerKind !== 'bed') {
    const bePercent = ((batch.earlierGrams + grams) / batch.dryGrams) * 100;
    const state = { container: batch.containerKind, isOyster: false, finished: false, recordedAsLost: false };
    questions.push(questionBe(bePercent, state));
  }
  return questions.filter((question) => question !== null);
}
