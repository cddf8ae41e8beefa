import type { FixedTerm, NewRow } from '@/lib/stats/mixed/design/fixed-term';
import type { ModelBatch } from '../adjusted/model-batch';
import { shareName } from '../adjusted/model-terms';

/** Where the next batch would stand. */
export type NextPlace = {
  readonly siteId: string;
  readonly methodKey: string;
  readonly speciesId: string;
  readonly materialId: string;
  /** Null: the mix of seasons that was grown. */
  readonly season: string | null;
};

/**
 * The row of a model for a batch that is not there yet. What belongs to the site's own mix of methods is as it is now; a
 * site without batches has the mean of all. Undefined where the model has not met the method, species or material.
 *
 * @param batches those the model is fitted to, in the order of the terms' values.
 */
export function nextRow(
  fixed: readonly FixedTerm[],
  batches: readonly ModelBatch[],
  place: NextPlace,
): NewRow | undefined {
  const met = (of: (batch: ModelBatch) => string, value: string) => batches.some((one) => of(one) === value);
  if (
    !met(({ methodKey }) => methodKey, place.methodKey) ||
    !met(({ speciesId }) => speciesId, place.speciesId)
  )
    return undefined;
  const levelsMaterial = fixed.some((term) => term.kind === 'covariate' && term.name.startsWith('material '));
  if (levelsMaterial && !met(({ materialId }) => materialId, place.materialId)) return undefined;
  const at = batches.findIndex(({ siteId }) => siteId === place.siteId);
  const levels: Readonly<Record<string, string | null>> = {
    species: place.speciesId,
    material: place.materialId,
    season: place.season !== null && met(({ season }) => season, place.season) ? place.season : null,
  };
  const row: Record<string, string | number> = {
    site: place.siteId,
    'site x method': `${place.siteId} ${place.methodKey}`,
  };
  for (const term of fixed) {
    if (term.kind === 'interaction') continue;
    if (term.kind === 'factor') {
      row[term.name] = place.methodKey;
      continue;
    }
    const [factor = ''] = term.name.split(' ');
    const level = levels[factor];
    if (term.name.startsWith(shareName))
      row[term.name] = at < 0 ? meanOf(term.values) : (term.values[at] ?? 0);
    else row[term.name] = level === null ? meanOf(term.values) : term.name === `${factor} ${level}` ? 1 : 0;
  }
  return row;
}

function meanOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let at = 0; at < values.length; at += 1) sum += values[at] ?? 0;
  return sum / values.length;
}
