import type { Limited } from '../adjusted/adjusted-rates';
import type { ShownFigure } from '../shown-figure';
import type { MethodCurve } from './method-curves';

/** A method by its key (id, 'mixed', 'second-life', 'none'), raw figures beside adjusted ones. */
export type MethodLine = {
  readonly method: string;
  readonly raw: ShownFigure;
  readonly adjusted: ShownFigure;
  /** Range of its rate at one further site, percent; null without an adjusted rate. */
  readonly further: Limited | null;
  readonly rawYield: ShownFigure;
  readonly adjustedYield: ShownFigure;
};

/** Why the raw difference of two methods is another than the adjusted one. */
export type WhyRawDiffers =
  /** `method` is used mostly at sites that lose less (or more) whatever they do. */
  | {
      readonly kind: 'sites';
      readonly method: string;
      readonly sitesLose: 'less' | 'more';
      readonly siteIds: readonly string[];
    }
  | { readonly kind: 'lots'; readonly method: string; readonly lotsLose: 'less' | 'more' };

/** What would help to tell two methods apart that cannot be told apart yet. */
export type WhatWouldTell =
  /** About so many more batches of one or both at sites that use both, some of which are named. */
  | {
      readonly kind: 'batches';
      readonly lacks: readonly { readonly method: string; readonly batches: number }[];
      readonly siteIds: readonly string[];
      /** The difference that these would tell, in points. */
      readonly points: number;
    }
  /** Another site that uses both: the next to try the method. `enough`: there are batches enough for so many points. */
  | {
      readonly kind: 'sites';
      readonly method: string;
      readonly siteId: string;
      readonly enough: boolean;
      readonly points: number;
    }
  /** Nothing to reckon a number of batches with. */
  | { readonly kind: 'unreckoned' }
  /** Both are used at every site; only time adds to it. */
  | { readonly kind: 'time' };

export type MethodPair = {
  readonly first: string;
  readonly second: string;
  /** Raw difference of contamination, first minus second, percentage points; null without two raw rates. */
  readonly rawPoints: number | null;
  /** Adjusted difference of contamination, in points. */
  readonly points: ShownFigure;
  /** Whether the first loses more or fewer, all pairs taken together (Holm), or it cannot be told. */
  readonly verdict: 'more' | 'fewer' | 'cannot-tell';
  readonly why: WhyRawDiffers | null;
  readonly would: WhatWouldTell | null;
  /** Adjusted difference of biological efficiency with total losses as 0, in points. */
  readonly yieldPoints: ShownFigure;
  readonly yieldVerdict: 'more' | 'fewer' | 'cannot-tell';
  readonly yieldWould: WhatWouldTell | null;
  /** Among batches that cropped: percent more (or less) of the first, with limits; null where it cannot be told. */
  readonly croppedPercent: Limited | null;
  /** Whether that tells, all pairs taken together (Holm). */
  readonly croppedTells: boolean;
};

/** One method at one site, and how the site does whatever it uses: odds of losing a unit against a typical site. */
export type MethodUse = { readonly method: string; readonly siteId: string; readonly batches: number };
export type SiteOdds = { readonly siteId: string; readonly odds: number };

export type MethodsAnswer = {
  readonly methods: readonly MethodLine[];
  readonly pairs: readonly MethodPair[];
  /** Index of the pair that the answer sentence is about; null without a pair. */
  readonly headline: number | null;
  readonly use: readonly MethodUse[];
  readonly siteOdds: readonly SiteOdds[];
  readonly curves: readonly MethodCurve[];
  /** A curve ends where fewer units than this are still watched. */
  readonly fewestWatched: number;
  /** Days to which the curves are drawn. */
  readonly curveDays: number;
  /** A term has so few levels that limits of differences are too narrow. */
  readonly fewLevels: boolean;
  readonly asOf: string;
};
