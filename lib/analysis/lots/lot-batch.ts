/** A batch whose window has passed and that somebody looked at, as the question about lots needs it. */
export type LotBatch = {
  readonly batchId: string;
  /** The one lot in question: of spawn, or of material. */
  readonly lotId: string;
  readonly siteId: string;
  readonly methodKey: string;
  /** What is compared only with its like: species and container. */
  readonly kind: string;
  /** Label of the treatment run, or of the batch itself where there is none. */
  readonly run: string;
  readonly units: number;
  /** Units found contaminated by the end of the window. */
  readonly contaminated: number;
};

/** A lot beside what its sites and methods would have lost anyway. */
export type JudgedLot = {
  readonly lotId: string;
  readonly batches: number;
  readonly runs: number;
  readonly sites: number;
  readonly units: number;
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
  | { readonly kind: 'judged'; readonly lots: readonly JudgedLot[]; readonly batches: number }
  | { readonly kind: 'cannot'; readonly reason: 'too-few-lots' | 'no-contamination' | 'no-fit' };
