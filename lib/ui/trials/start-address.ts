import type { Route } from 'next';
import type { NextRun } from '@/lib/records/trial/list-next-runs.query';

/** The form of a new batch with everything that was drawn in its boxes. */
export function startAddress(run: NextRun): Route {
  const query = new URLSearchParams({
    container: run.containerKind,
    trialSlotId: run.slotId,
    siteId: run.siteId,
    speciesId: run.speciesId,
    unitCount: String(run.unitsPerRun),
    ...(run.methodId === null ? {} : { 'components.0.treatment': `method:${run.methodId}` }),
  });
  return `/batches/new?${query}` as Route;
}

/** The form of the treatment that was drawn; null where the arm names none, or nothing is treated. */
export function treatmentAddress({ methodKind, siteId, methodId }: NextRun): Route | null {
  if (methodKind === null || methodKind === 'untreated' || methodId === null) return null;
  return `/treatments/new?${new URLSearchParams({ method: methodId, siteId })}` as Route;
}
