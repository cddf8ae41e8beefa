import type { DueLine } from '@/lib/records/today/due-line';

/** The one form that a line needs, filled in as far as the line knows. */
export function dueAddress(line: DueLine): string {
  if (line.of === 'batch') {
    switch (line.due.kind) {
      case 'first-look':
      case 'window-look':
      case 'colonised':
      case 'pins':
        return `/quick/check?batch=${line.batchId}`;
      case 'first-harvest':
      case 'next-flush':
        return `/quick/harvest?batch=${line.batchId}`;
      case 'quiet':
      case 'none-left':
        return `/batches/${line.batchId}/close`;
    }
  }
  const run = `/treatments/${line.runId}`;
  switch (line.due.kind) {
    case 'lime-soaking':
    case 'ferment-under':
      return run;
    case 'lime-lift':
    case 'lime-late':
    case 'ferment-ready':
    case 'ferment-late':
    case 'heat-held':
    case 'unfinished':
      return `${run}/end`;
    case 'heat-unread':
    case 'heat-warming':
    case 'heat-below':
    case 'heat-above':
    case 'heat-holding':
    case 'heat-confirm':
    case 'load-cooling':
      return `${run}/readings/new`;
    case 'load-waiting':
      return `/batches/new?siteId=${line.siteId}&components.0.treatment=run:${line.runId}`;
  }
}
