import type { CountedBatch } from '../adjusted/contamination-request';
import type { RandomTermName } from '../adjusted/model-terms';
import type { ObservedExpected } from './observed-expected';

/**
 * What is judged: spawn lots, material lots, the makers of spawn or the sources of material. Batches of one origin are
 * compared with what they would have lost with an ordinary origin at their sites, by their methods.
 */
export type OriginKind = {
  /** The origin of a batch; undefined where it is not recorded. */
  readonly originOf: (batch: CountedBatch) => string | undefined;
  /** The lot of that origin that a batch came from: lots of one maker are its clusters. */
  readonly lotOf: (batch: CountedBatch) => string;
  /** The random parts of the model. */
  readonly random: readonly RandomTermName[];
  /** The part by which ordinary origins of this kind differ; none where no origin of the kind is expected to differ. */
  readonly shared: RandomTermName | undefined;
  /** Parts besides the run that only some batches of an origin share. */
  readonly crossed: readonly RandomTermName[];
  /** Fewer origins than this cannot be compared. */
  readonly fewestOrigins: number;
  /** An origin with fewer lots than this is not judged. */
  readonly fewestLots: number;
};

export type JudgedOrigin = ObservedExpected & {
  readonly origin: string;
  readonly lots: number;
  readonly verdict: 'loses-more' | 'as-expected' | 'too-few-lots';
};

export type OriginsAnswer =
  | {
      readonly kind: 'judged';
      readonly origins: readonly JudgedOrigin[];
      /** Judged batches whose origin is not recorded, or that stand where nothing else was grown to compare with. */
      readonly leftOut: number;
    }
  | { readonly kind: 'cannot'; readonly reason: 'too-few-lots' | 'no-contamination' | 'no-fit' };
