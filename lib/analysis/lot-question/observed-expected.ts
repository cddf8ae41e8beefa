/** What was contaminated of one lot, maker or source, beside what its sites and methods would have lost anyway. */
export type ObservedExpected = {
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
  /** False discovery rate at which it is still called out (Benjamini-Hochberg); 1 for one that is not judged. */
  readonly falseDiscovery: number;
};
