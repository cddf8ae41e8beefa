import type { CannotCompute } from '../../stats/outcome';
import type { ChartWidth, WidthsRequest } from './chart-widths';
import type { FitAnswer } from './fit-request';
import type { PackedRequest } from './packed-request';

/** What the thread can be given. */
export type ThreadJob = PackedRequest | WidthsRequest;

/** What the thread sends back. */
export type WorkerReply =
  | { readonly kind: 'done'; readonly answer: FitAnswer | CannotCompute | readonly ChartWidth[] }
  | { readonly kind: 'bad-argument'; readonly argument: string; readonly message: string };
