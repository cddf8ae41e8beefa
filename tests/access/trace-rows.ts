import { getTrace } from '@/lib/records/trace/get-trace.query';
import { getWhereabouts } from '@/lib/records/trace/get-whereabouts.query';
import { query } from './operation-rows';

/** Lots are known to every member; what a trace shows of batches and harvests is what the asker may see of them. */
export const traceRows = [
  query(
    'records/trace/get-trace.query',
    'yy---',
    (c, w) => getTrace(c, 'spawn-lot', w.stock.oysterSpawn),
    (trace, w) => JSON.stringify(trace ?? null).includes(w.batch),
  ),
  query(
    'records/trace/get-whereabouts.query',
    'yy---',
    (c, w) => getWhereabouts(c, 'spawn-lot', w.stock.oysterSpawn),
    (went) => went.own.all.batches > 0,
  ),
];
