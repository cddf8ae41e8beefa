/** A lot beside what its sites and methods would have lost anyway. */
export type JudgedLot = {
  readonly lotId: string;
  readonly batches: number;
  readonly sites: number;
  readonly units: number;
  /** Units found contaminated by the end of the window. */
  readonly observed: number;
  readonly expected: number;
  /** Observed over expected with its 95 % limits. */
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
  /** False discovery rate at which this lot is still called out (Benjamini-Hochberg). */
  readonly falseDiscovery: number;
  readonly verdict: 'loses-more' | 'as-expected';
};

export type LotsAnswer =
  | {
      readonly kind: 'judged';
      readonly lots: readonly JudgedLot[];
      /** Judged batches whose lot is not recorded, or that stand where nothing else was grown to compare with. */
      readonly leftOut: number;
    }
  | { readonly kind: 'cannot'; readonly reason: 'too-few-lots' | 'no-contamination' | 'no-fit' };
