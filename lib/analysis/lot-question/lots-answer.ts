import type { ObservedExpected } from './observed-expected';

export type JudgedLot = ObservedExpected & {
  readonly lotId: string;
  readonly verdict: 'loses-more' | 'as-expected';
};

export type LotsAnswer =
  | {
      readonly kind: 'judged';
      readonly lots: readonly JudgedLot[];
      /** Judged batches whose lot is not recorded, or that stand where nothing else was grown to compare with. */
      readonly leftOut: number;
    }
  | { readonly kind: 'cannot'; readonly reason: 'too-few-lots' | 'no-contamination' | 'no-fit' };
