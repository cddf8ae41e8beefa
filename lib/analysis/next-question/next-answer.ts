import type { LocalText } from '@/lib/growing/local-text';
import type { ContainerKind, MethodKind } from '@/lib/growing/vocabulary';
import type { ShownFigure } from '../shown-figure';
import type { Standing } from './level-standing';
import type { MethodCost } from './method-cost';
import type { Joint } from './settle-choice';

/** One method that a site could use for its next batch. */
export type Outlook = {
  readonly methodId: string;
  readonly kind: MethodKind;
  readonly verdict: 'suits' | 'possible' | 'not-listed';
  readonly reasons: readonly LocalText[];
  /**
   * Judged batches of the method: in the network as far as that tells of no single site (else at this site), at this site, and
   * there with this species and material.
   */
  readonly knownBatches: number;
  readonly siteBatches: number;
  readonly mixBatches: number;
  /** Contaminated in the next batch, percent, with the limits that hold it 95 times in 100; cannot where too thin. */
  readonly loss: ShownFigure;
  /** The same limits as whole units of a batch of the usual size; null without a figure. */
  readonly units: { readonly low: number; readonly high: number } | null;
  /** Biological efficiency of the next batch, total losses as 0, percent, with such limits. */
  readonly yield: ShownFigure;
  /** What the site itself has recorded of this method with this species and material. */
  readonly ownLoss: ShownFigure;
  readonly ownYield: ShownFigure;
  readonly cost: MethodCost;
};

/** Which method a site would do best with. Methods are ids; 'by' says what decided. */
export type NextVerdict =
  | {
      readonly kind: 'told';
      readonly by: 'yield' | 'loss';
      readonly leader: string;
      /** Cannot be told from the leader. */
      readonly equal: readonly string[];
      /** Told from the leader, all looked at together. */
      readonly worse: readonly string[];
    }
  | { readonly kind: 'cannot'; readonly reason: 'no-method' | 'too-thin' };

/** How far the widest open difference would narrow, in points of what decided. */
export type Lesson = { readonly methodId: string; readonly from: number; readonly to: number };

export type Teaching =
  | {
      readonly kind: 'lessons';
      /** Batches that each lesson is reckoned with. */
      readonly batches: number;
      /** The two methods whose difference is least known among those that cannot be told from the leader. */
      readonly pair: readonly [string, string];
      readonly by: 'yield' | 'loss';
      /** The lesson that narrows most comes first; of equals the one with the smaller id. */
      readonly lessons: readonly Lesson[];
    }
  /** Every method is told apart, there is but one or none, or nothing can be worked out. */
  | { readonly kind: 'none'; readonly reason: 'settled' | 'one-method' | 'no-method' | 'too-thin' };

/** What a site could do next with one species and material. */
export type NextChoice = {
  readonly speciesId: string;
  readonly materialId: string;
  readonly batches: number;
  readonly outlooks: readonly Outlook[];
  readonly unsuited: readonly { readonly methodId: string; readonly reasons: readonly LocalText[] }[];
  /** Methods that would suit but that the site cannot use as far as is known. */
  readonly notHere: readonly string[];
  /** How far the expectation is for this very species, material and season; null where no model carries anything. */
  readonly standing: Standing | null;
  /** What verdict and lessons follow from, so that they can be found for fewer methods. */
  readonly joints: readonly Joint[];
  readonly verdict: NextVerdict;
  readonly teaching: Teaching;
};

/** What a site may be shown: nothing of another site, only what the network's models expect here. */
export type NextPart = {
  readonly siteId: string;
  readonly container: ContainerKind;
  /** Units of the batch that is looked forward to: the middle of the site's last ones. */
  readonly usualUnits: number;
  /** Season ('1' winter) of the batch that is looked forward to; null for the year as it was grown. */
  readonly season: string | null;
  /** Limits are too narrow, since a term has few levels. */
  readonly fewLevels: boolean;
  readonly unsaid: boolean;
  readonly choices: readonly NextChoice[];
  readonly asOf: string;
};

/** What the page of every site shows of one: its leading method with the species and material it grows most. */
export type NextBrief = {
  readonly siteId: string;
  readonly best:
    | (Pick<Outlook, 'methodId' | 'loss' | 'yield'> & { readonly equal: readonly string[] })
    | null;
  /** Told from at least one other method and level with none, still open, or nothing to choose. */
  readonly state: 'told' | 'open' | 'none';
};

export type NextAnswer = {
  /** Sites that have something to choose from. */
  readonly briefs: readonly NextBrief[];
  /** Kept by site alone: of a thousand sites they are some thirty megabytes. */
  readonly sites: readonly NextPart[];
};
