/** Batches far outside what the models predict of one more batch at their site, by their method and of their species. */
export type SurprisesAnswer = {
  readonly losses: readonly {
    readonly batchId: string;
    readonly siteId: string;
    /** The day on which it was judged. */
    readonly on: string;
    readonly found: number;
    readonly units: number;
    /** More than these would be found in 1 of 1000 such batches at most. */
    readonly mostLikely: number;
  }[];
  /** Of batches that cropped; biological efficiency in percent, with the range that holds 998 of 1000. */
  readonly yields: readonly {
    readonly batchId: string;
    readonly siteId: string;
    readonly on: string;
    readonly side: 'above' | 'below';
    readonly bePercent: number;
    readonly low: number;
    readonly high: number;
  }[];
  /** The last day on which a batch of each spawn lot was judged. */
  readonly lotLast: Readonly<Record<string, string>>;
};
