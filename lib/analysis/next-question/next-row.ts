import type { FixedTerm, NewRow } from '@/lib/stats/mixed/design/fixed-term';
import { shareName } from '../adjusted/model-terms';
import { levelStanding } from './level-standing';
import type { MetLevels } from './met-levels';

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
 * site without batches has the mean of all. A material or season of which there are too few batches is taken as the mix in
 * which the species was grown. Undefined where the model has not met the method, or too little of the species.
 *
 * @param met the levels of the batches that the model is fitted to. @param means of the covariates.
 */
export function nextRow(
  fixed: readonly FixedTerm[],
  met: MetLevels,
  means: CovariateMeans,
  place: NextPlace,
): NewRow | undefined {
  const standing = levelStanding(met, place);
  if (!met.methods.has(place.methodKey) || !standing.speciesTold) return undefined;
  const at = met.firstOfSite.get(place.siteId);
  const levels: Readonly<Record<string, string | null>> = {
    species: place.speciesId,
    material: standing.ofMaterial === 'told' ? place.materialId : null,
    season: standing.ofSeason === 'told' ? place.season : null,
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
    const mean = means(place.speciesId).get(term.name) ?? 0;
    const [factor = ''] = term.name.split(' ');
    const level = levels[factor];
    if (term.name.startsWith(shareName)) row[term.name] = at === undefined ? mean : (term.values[at] ?? 0);
    else row[term.name] = level === null ? mean : term.name === `${factor} ${level}` ? 1 : 0;
  }
  return row;
}

export type CovariateMeans = (species: string) => ReadonlyMap<string, number>;

/**
 * The mean of each covariate over the batches of a species: the mix of materials and seasons in which it was grown. Over all
 * batches it would mix in materials that no batch of the species was made of, of which the model cannot tell what is the
 * material's and what the other species'.
 */
export function covariateMeans(
  fixed: readonly FixedTerm[],
  batches: readonly { readonly speciesId: string }[],
): CovariateMeans {
  const placesOf = new Map<string, number[]>();
  for (const [at, { speciesId }] of batches.entries())
    placesOf.get(speciesId)?.push(at) ?? placesOf.set(speciesId, [at]);
  const known = new Map<string, ReadonlyMap<string, number>>();
  return (species) => {
    const places = placesOf.get(species) ?? [];
    const means =
      known.get(species) ??
      new Map(
        fixed.flatMap((term) =>
          term.kind === 'covariate' ? [[term.name, meanAt(term.values, places)] as const] : [],
        ),
      );
    known.set(species, means);
    return means;
  };
}

function meanAt(values: ArrayLike<number>, places: readonly number[]): number {
  return places.reduce((sum, at) => sum + (values[at] ?? 0), 0) / Math.max(1, places.length);
}
