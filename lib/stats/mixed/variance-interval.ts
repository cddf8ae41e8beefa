import type { Interval } from '../outcome';

/** A standard deviation's profile interval: a random term's, or the residual's (`term` undefined). */
export type DeviationInterval = { readonly term: string | undefined; readonly interval: Interval };
