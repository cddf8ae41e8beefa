import type { Route } from 'next';
import type { FaultKind, RecordFault } from '@/lib/analysis/record-question/record-fault';

const below: Readonly<Partial<Record<FaultKind, string>>> = {
  'not-inspected': 'looks/new',
  'no-dry-mass': 'correct',
  'no-area': 'correct',
  'assumed-moisture': 'correct',
  'run-missing': 'correct',
  'no-spawn-lot': 'correct',
  quiet: 'close',
  'run-no-end': 'end',
  'run-no-readings': 'readings/new',
  'run-after-filling': 'correct',
  'no-destination': 'correct',
  'weighing-heavy': 'correct',
};

const folder = { batch: '/batches', run: '/treatments', weighing: '/weighings' } as const;

/** Where a fault is mended: the form for it, or the record itself where more than one thing could be wrong. */
export function mendPath({ kind, of, id }: RecordFault): Route {
  if (kind === 'harvest-unknown') return `/weighings/new?batch=${id}` as Route;
  const form = below[kind];
  return (form === undefined ? `${folder[of]}/${id}` : `${folder[of]}/${id}/${form}`) as Route;
}
