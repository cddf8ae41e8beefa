import type { Limited } from '../adjusted/adjusted-rates';
import type { ShownFigure } from '../shown-figure';

/** What batches can differ by, in the order in which it is shown; `rest` is from batch to batch. */
export const lossSources = ['site', 'site x method', 'spawn lot', 'material lot', 'run', 'rest'] as const;
export type LossSource = (typeof lossSources)[number];

/** Why the share of a source cannot be told. */
export type UntoldReason =
  /** Fewer than four sites, lots or runs. */
  | 'few-levels'
  /** Not recorded for most batches. */
  | 'not-recorded'
  /** Every batch has one of its own, so it cannot be told from the batch. */
  | 'each-own'
  /** It splits the batches exactly as another source does. */
  | 'same-as';

export type SourceShare = { readonly source: LossSource; readonly levels: number } & (
  | {
      readonly kind: 'share';
      /** Percent of what batches differ by beyond chance. */
      readonly figure: ShownFigure;
      readonly percent: Limited;
      /** Whether the records rule out that it makes no difference. */
      readonly told: boolean;
    }
  | { readonly kind: 'cannot'; readonly reason: UntoldReason; readonly sameAs: LossSource | null }
);

/** One site, lot or run that stands out, beside what its batches would have lost with an ordinary one. */
export type TellingExample = {
  readonly source: Exclude<LossSource, 'rest'>;
  readonly levelId: string;
  /** Code of a lot or run; null where the page has the name. */
  readonly code: string | null;
  readonly siteId: string;
  readonly methodKey: string;
  readonly batches: number;
  readonly units: number;
  readonly found: number;
  readonly expected: number;
  /** Odds of loss against an ordinary one. */
  readonly odds: Limited;
};

/** A source of which no single site, lot or run stands out beyond what chance does among as many. */
export type NoneOut = { readonly source: Exclude<LossSource, 'rest'>; readonly levels: number };

export type VariationPart =
  | {
      readonly kind: 'shares';
      readonly batches: number;
      readonly sources: readonly SourceShare[];
    }
  | {
      readonly kind: 'cannot';
      readonly reason: 'too-few' | 'no-contamination' | 'nothing-varies' | 'no-fit';
    };

export type LossesAnswer = {
  readonly contamination: VariationPart;
  readonly yield: VariationPart;
  readonly examples: readonly TellingExample[];
  readonly noneOut: readonly NoneOut[];
  /**
   * How much a typical batch differs by chance alone, because few units are counted, for each 1 of all sources together;
   * null without shares.
   */
  readonly chanceRatio: number | null;
  readonly typicalUnits: number;
};
