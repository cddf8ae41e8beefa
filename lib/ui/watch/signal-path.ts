import type { Route } from 'next';
import type { Signal } from '@/lib/analysis/watch-question/signal';

/** The page on which a signal is looked into. */
export function signalPath(signal: Signal): Route {
  switch (signal.kind) {
    case 'lot':
      return `/spawn-lots/${signal.lotId}` as Route;
    case 'course':
      return `/questions/sites/${signal.siteId}` as Route;
    case 'run':
      return `/treatments/${signal.runId}` as Route;
    case 'loss':
    case 'yield':
      return `/batches/${signal.batchId}` as Route;
    case 'records':
      return `/questions/records?site=${signal.siteId}#site-${signal.siteId}` as Route;
  }
}
