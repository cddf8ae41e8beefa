import { type Failure, type FieldError, notFound } from '@/lib/base/result';
import type {
  Material,
  Method,
  Site,
  SpawnLot,
  Species,
  SubstrateLot,
  TreatmentRun,
} from '@/lib/database/generated/client';
import { dateInZone } from '@/lib/growing/calendar-date';
import type { BatchInput, ComponentInput } from './batch-fields.input';
import type { BatchLookups } from './batch-lookups';

export type ResolvedComponent = {
  readonly input: ComponentInput;
  readonly lot: SubstrateLot & { material: Material };
  readonly method: Method;
  readonly run: TreatmentRun | null;
};

export type ResolvedSpawn = { readonly lot: SpawnLot; readonly grams: number | null };

/** A batch whose every reference was found. */
export type ResolvedBatch = {
  readonly site: Site;
  readonly species: Species;
  readonly components: readonly ResolvedComponent[];
  readonly spawn: readonly ResolvedSpawn[];
};

function resolveComponents(input: BatchInput, found: BatchLookups, site: Site, errors: FieldError[]) {
  return input.components.flatMap((component, index): ResolvedComponent[] => {
    const lot = found.lots.get(component.lotId);
    const run = component.treatment.kind === 'run' ? (found.runs.get(component.treatment.id) ?? null) : null;
    const method = found.methods.get(run?.methodId ?? component.treatment.id);
    if (!lot) errors.push({ field: `components.${index}.lotId`, code: 'not-found' });
    if (!method || (component.treatment.kind === 'run' && !run)) {
      errors.push({ field: `components.${index}.treatment`, code: 'not-found' });
    } else if (run && dateInZone(run.startedAt, site.timeZone) > input.inoculatedOn) {
      const values = { date: dateInZone(run.startedAt, site.timeZone) };
      errors.push({ field: `components.${index}.treatment`, code: 'treated-after-inoculation', values });
    }
    return lot && method ? [{ input: component, lot, method, run }] : [];
  });
}

function resolveSpawn(input: BatchInput, found: BatchLookups, errors: FieldError[]) {
  return input.spawn.flatMap((share, index): ResolvedSpawn[] => {
    const lot = found.spawnLots.get(share.lotId);
    if (!lot) errors.push({ field: `spawn.${index}.lotId`, code: 'not-found' });
    else if (lot.speciesId !== input.speciesId)
      errors.push({ field: `spawn.${index}.lotId`, code: 'spawn-other-species' });
    return lot ? [{ lot, grams: share.mass }] : [];
  });
}

/** Joins a batch with what it points to, or names every reference that is not there or cannot be. */
export function resolveBatch(input: BatchInput, found: BatchLookups): ResolvedBatch | Failure {
  const errors: FieldError[] = [];
  const { site, species } = found;
  if (!site) return notFound;
  if (!species) errors.push({ field: 'speciesId', code: 'not-found' });
  if (!found.starterKnown) errors.push({ field: 'startedById', code: 'not-found' });
  if (!species) return { kind: 'invalid', errors };
  const components = resolveComponents(input, found, site, errors);
  const spawn = resolveSpawn(input, found, errors);
  return errors.length > 0 ? { kind: 'invalid', errors } : { site, species, components, spawn };
}
