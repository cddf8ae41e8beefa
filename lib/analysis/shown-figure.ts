/**
 * What every screen, export and report shows of a number: the number with its history. Codes are stable words
 * that the catalogues translate; no sentence in a reader's language is made here.
 */

/** Unit of the value. Percentages run 0-100 (a biological efficiency may exceed 100). */
export type FigureUnit =
  | 'percent'
  /** A difference of two percentages: so many more (or fewer) units in 100. */
  | 'points'
  | 'kilograms'
  | 'kilograms-per-square-metre'
  | 'grams-per-log-year'
  | 'people'
  | 'sites';

/** How the figure was worked out. */
export type FigureMethodCode =
  /** One binomial sample of like units. */
  | 'wilson'
  /** Sum of contaminated units over sum of inoculated units, variance between clusters. */
  | 'clustered-proportion'
  /** Sum over sum, linearised variance between clusters. */
  | 'ratio-of-sums'
  /** Binomial-logit mixed model: adjusted rates and their differences. */
  | 'binomial-mixed'
  /** Linear mixed model of biological efficiency, total losses being 0. */
  | 'linear-mixed'
  /** One more batch there by the mixed model, with everything that varies. */
  | 'next-batch-loss'
  | 'next-batch-yield'
  /** One percentage for each treatment run; arms of a trial compared within sites by a linear model. */
  | 'run-values'
  /** Shares of the variances of a mixed model of contamination, or of the logarithm of the yield. */
  | 'contamination-shares'
  | 'yield-shares'
  /** Plain counting or adding up; nothing is inferred. */
  | 'sum';

export type FigureMethod = {
  readonly code: FigureMethodCode;
  /** Published source of the method, as a reference; empty for plain sums. */
  readonly source: string;
  /** What the interval treats as independent of each other. */
  readonly clusteredBy: 'unit' | 'treatment-run' | 'site' | 'everything-random' | 'nothing';
};

export type NoIntervalReason =
  /** Fewer than three clusters by treatment run. */
  | 'too-few-runs'
  /** Fewer than three sites. */
  | 'too-few-sites'
  /** Beds are shown as counts of failed beds. */
  | 'beds-are-counted'
  /** A sum of everything recorded: nothing was sampled. */
  | 'complete-count'
  /** The data do not carry an interval although there are clusters enough. */
  | 'not-enough-data';

export type ShownInterval =
  | {
      readonly kind: 'interval';
      readonly low: number;
      readonly high: number;
      /** 0-1, for instance 0.95. */
      readonly level: number;
      readonly method: string;
    }
  | { readonly kind: 'none'; readonly reason: NoIntervalReason };

/** Something the reader must know about the rows behind a figure. */
export type FigureMark =
  | 'assumed-moisture'
  | 'few-batches'
  /** A rate of clustered units from so few groups that its interval leans on the range of correlations assumed. */
  | 'few-groups'
  /** A model in which sites, lots or the like have fewer than 8 levels: its limits are too narrow (88 of 100 hold, not 95). */
  | 'few-levels'
  /** Learned from batches of one or two other sites, too: their number would tell of them. */
  | 'others-untold'
  /** Expected of one species and material by a model that batches of all of them taught, levelled out. */
  | 'learned-from-all'
  | 'mixed-trim'
  | 'trimmed'
  | 'as-picked'
  | 'shared-weighing'
  | 'species-pooled'
  | 'materials-pooled'
  | 'second-life'
  /** A second life gathered several batches; its mass was shared out among them. */
  | 'shared-among-sources'
  | 'still-open'
  | 'run-not-recorded';

export type LeftOutReason =
  | 'voided'
  /** The assessment day still lies ahead. */
  | 'window-open'
  /** No assessment window is set for this species and container. */
  | 'no-window'
  /** No look or finding on or after the end of the window, and units left that could have been looked at. */
  | 'not-inspected'
  /** Dry mass (of a bed: area) cannot be worked out. */
  | 'no-dry-mass'
  | 'no-area'
  /** Closed as picked but not weighed. */
  | 'not-weighed'
  /** Old enough, nothing weighed, and not said whether nothing was picked. */
  | 'harvest-unknown'
  /** Biological efficiency of logs: only over a finished log's life. */
  | 'log-not-finished'
  /** Not among the batches that a narrower figure is about, for instance those that cropped. */
  | 'did-not-crop';

export type LeftOut = {
  readonly reason: LeftOutReason;
  readonly batches: number;
  readonly units: number;
};

/** How much lies behind a figure. */
export type FigureSize = {
  readonly batches: number;
  readonly units: number;
  /** Clusters by treatment run; an untreated batch is one of its own. */
  readonly runs: number;
  readonly sites: number;
};

/** The sums that the figure divides, in the unit named; kept whole so that they can be checked by hand. */
export type FigureParts = {
  readonly numerator: number;
  readonly denominator: number;
  readonly unit: 'units' | 'grams' | 'grams-and-square-centimetres' | 'grams-and-log-days';
};

export type FigureHistory = {
  readonly unit: FigureUnit;
  readonly n: FigureSize;
  readonly parts: FigureParts;
  readonly method: FigureMethod;
  readonly marks: readonly FigureMark[];
  readonly leftOut: readonly LeftOut[];
  /** Instant (UTC, ISO 8601) at which the records were read. */
  readonly asOf: string;
  /** Query string (without '?') that opens the rows behind the figure; empty when there is no such page. */
  readonly rowsQuery: string;
};

export type ShownFigure =
  /** An estimate with its interval, or with the reason why none is given. */
  | (FigureHistory & { readonly kind: 'figure'; readonly value: number; readonly interval: ShownInterval })
  /** Too little for an estimate: the sums only, for instance "3 of 40 bags". */
  | (FigureHistory & { readonly kind: 'counts'; readonly reason: NoIntervalReason })
  /** Nothing to show; the reason is what was left out, or that there is no record at all. */
  | (Omit<FigureHistory, 'parts'> & { readonly kind: 'cannot'; readonly reason: CannotShowReason });

export type CannotShowReason =
  | 'no-batches'
  | 'all-left-out'
  | 'beds-have-no-be'
  | 'other-site-unseen'
  /** Nothing (or everything) was lost: a model has no finite rate. */
  | 'no-event'
  /** No site used both methods, directly or through a third one. */
  | 'no-shared-site'
  | 'not-enough-data';

/** Confidence level of every interval that is shown. */
export const shownLevel = 0.95;

/**
 * Fewer groups than this say little about how alike the units of one group are: the mark "few groups" tells that the
 * interval of a rate leans on an assumed range (the calibration table of the statistics).
 */
export const fewGroups = 8;

/** A figure on fewer batches than this carries the mark "few batches". Common practice, not a published limit. */
export const fewBatches = 10;

/** Fewer independent clusters than this and only the counts are shown. */
export const fewestClusters = 3;
