/** A figure in the reader's words and writing: what screens, charts and print draw. Made by `loadFigureViews`. */
export type FigureView = {
  /** `counts`: too little for an estimate, only "3 of 40"; `cannot`: nothing to show but the reason. */
  readonly kind: 'figure' | 'counts' | 'cannot';
  /** "12.4", "3 of 40" or "Cannot compute". */
  readonly estimate: string;
  /** "%", "kg"; empty where the estimate says it all. */
  readonly unit: string;
  /** "8.1–18.3", empty when there is none. */
  readonly interval: string;
  /** The same numbers as a chart draws them, in the unit written; undefined where there is no estimate. */
  readonly plotted: { readonly estimate: number; readonly low?: number; readonly high?: number } | undefined;
  /** Why there is no interval or no figure at all, empty otherwise. */
  readonly reason: string;
  /** "12 batches", "240 units" and so on. */
  readonly size: readonly string[];
  /** What the reader must know about the rows behind it. */
  readonly marks: readonly string[];
  readonly history: FigureHistoryView;
};

export type FigureHistoryView = {
  readonly method: string;
  readonly source: string;
  readonly clusteredBy: string;
  /** The division as it can be checked by hand: "30 of 240". */
  readonly parts: string;
  readonly leftOut: readonly string[];
  readonly asOf: string;
};
