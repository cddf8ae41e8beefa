import type { LeftOutReason } from '../shown-figure';

/** What is judged of batches: see `contamination-figure.ts` and `yield-figure.ts` of the comparison. */
export type Measure = 'contamination' | 'yield' | 'cropped' | 'life';

/** Batches of one site and method that count today. `later`: found after the window. */
export type CountedSum = readonly [
  siteId: string,
  methodKey: string,
  measure: Measure,
  numerator: number,
  denominator: number,
  later: number,
  openUnits: number,
  openUnitDays: number,
];

/** Of all batches of a method that count today. `later`: found after the window, or weighed after the yield day. */
export type AmountSum = readonly [
  methodKey: string,
  measure: Measure,
  batches: number,
  units: number,
  later: number,
  lostClean: number,
];

/** Of the batches of a method that count, how many carry what a reader must know; `runs` without those apart. */
export type MarkedSum = readonly [
  methodKey: string,
  measure: Measure,
  runs: number,
  runMissing: number,
  trimmed: number,
  asPicked: number,
  dryAssumed: number,
  shared: number,
  materials: readonly string[],
];

export type LeftOutSum = readonly [
  methodKey: string,
  measure: Measure,
  reason: LeftOutReason,
  batches: number,
  units: number,
];

/** Sums of all batches within a filter as of today, whatever their number. */
export type OutcomeSums = {
  readonly counted: readonly CountedSum[];
  readonly amounts: readonly AmountSum[];
  readonly marked: readonly MarkedSum[];
  readonly leftOut: readonly LeftOutSum[];
  /** Sites with any batch within the filter, counted or not. */
  readonly sites: readonly string[];
};
