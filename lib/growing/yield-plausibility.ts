import type { ContainerKind } from './vocabulary';

/** Something worth asking about before it is saved or shown; never a refusal. */
export type PlausibilityQuestion = {
  readonly code: 'be-low' | 'be-high' | 'log-be-high' | 'unit-yield-high';
  readonly limit: number;
  readonly given: number;
};

/**
 * Bands that deserve "check the weights". The highest published oyster BE read is 180 % and of any species 176.3 %
 * (AGUILAR17; AMB Express 2017), the lowest limit is common practice. Logs: published lifetime BE 0-8.8 %
 * (HortScience abstract, logs of 1991); the oyster band does not fit them, 0-20 % is common practice.
 */
export const plausibleBe = { oysterLowPercent: 5, highPercent: 200, logHighPercent: 20 } as const;

/**
 * Asks about an implausible BE. The low end is asked only of a finished oyster batch: an open one is still
 * growing, other species have no band. A total loss (BE 0 recorded as such) needs no question: pass
 * `recordedAsLost`. Answers null when there is nothing to ask.
 */
export function questionBe(
  bePercent: number,
  batch: {
    readonly container: ContainerKind;
    readonly isOyster: boolean;
    readonly finished: boolean;
    readonly recordedAsLost: boolean;
  },
): PlausibilityQuestion | null {
  if (batch.container === 'log') {
    return bePercent > plausibleBe.logHighPercent
      ? { code: 'log-be-high', limit: plausibleBe.logHighPercent, given: bePercent }
      : null;
  }
  if (bePercent > plausibleBe.highPercent) {
    return { code: 'be-high', limit: plausibleBe.highPercent, given: bePercent };
  }
  const low =
    batch.isOyster && batch.finished && !batch.recordedAsLost && bePercent < plausibleBe.oysterLowPercent;
  return low ? { code: 'be-low', limit: plausibleBe.oysterLowPercent, given: bePercent } : null;
}

/** Fresh grams from one unit in one weighing above which an entry is asked about. Common practice. */
export const plausibleGramsPerUnit: Readonly<Record<ContainerKind, number>> = {
  bag: 5_000,
  bucket: 5_000,
  tray: 5_000,
  block: 3_000,
  log: 3_000,
  bed: 50_000,
};

/** Asks about one weighing that is too heavy for the units it came from (3,000 kg from one bag). */
export function questionWeighing(
  grams: number,
  units: number,
  container: ContainerKind,
): PlausibilityQuestion | null {
  const limit = plausibleGramsPerUnit[container] * Math.max(1, units);
  return grams > limit ? { code: 'unit-yield-high', limit, given: grams } : null;
}
