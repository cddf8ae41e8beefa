/** One line of a dot-and-interval chart; the texts are the same as in the table that follows it. */
export type ChartRow = {
  readonly key: string;
  readonly label: string;
  /** Heading above the first row of each group. */
  readonly group?: string;
  /** Which colour and shape, counted from 0. */
  readonly series?: number;
  /** Missing: only the counts are known, no mark is drawn. */
  readonly estimate?: number;
  readonly low?: number;
  readonly high?: number;
  /** "12.4 (8.1–18.3)" or "3 of 40". */
  readonly text: string;
  /** "n = 12 batches". */
  readonly size: string;
};
