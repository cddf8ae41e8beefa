import type { CannotCompute } from '../../stats/outcome';
import type { FitAnswer } from './fit-request';

/** What the fitting thread sends back. */
export type WorkerReply =
  | { readonly kind: 'done'; readonly answer: FitAnswer | CannotCompute }
  | { readonly kind: 'bad-argument'; readonly argument: string; readonly message: string };
