import type { ModelBatch } from '../adjusted/model-batch';
import type { LevelledOut } from '../adjusted/model-terms';

export type MetLevel = { readonly batches: number; readonly sites: ReadonlySet<string> };

/** What the batches that a model is fitted to have of each level, counted once. */
export type MetLevels = {
  readonly methods: ReadonlyMap<string, number>;
  readonly species: ReadonlyMap<string, MetLevel>;
  readonly materials: ReadonlyMap<string, MetLevel>;
  readonly seasons: ReadonlyMap<string, MetLevel>;
  /** Sites that have used each method. */
  readonly sitesOfMethod: ReadonlyMap<string, ReadonlySet<string>>;
  /** The place of each site's first batch among the terms' values. */
  readonly firstOfSite: ReadonlyMap<string, number>;
  readonly levelledOut: LevelledOut;
};

/** Levels are named by as few batches as this: fewer are a handful of chances. Our choice. */
export const fewestOfLevel = 6;

type Growing = { batches: number; sites: Set<string> };

export function metLevels(batches: readonly ModelBatch[], levelledOut: LevelledOut): MetLevels {
  const methods = new Map<string, number>();
  const species = new Map<string, Growing>();
  const materials = new Map<string, Growing>();
  const seasons = new Map<string, Growing>();
  const sitesOfMethod = new Map<string, Set<string>>();
  const firstOfSite = new Map<string, number>();
  const add = (map: Map<string, Growing>, level: string, siteId: string) => {
    const one = map.get(level) ?? { batches: 0, sites: new Set<string>() };
    one.batches += 1;
    one.sites.add(siteId);
    map.set(level, one);
  };
  for (const [at, batch] of batches.entries()) {
    methods.set(batch.methodKey, (methods.get(batch.methodKey) ?? 0) + 1);
    add(species, batch.speciesId, batch.siteId);
    add(materials, batch.materialId, batch.siteId);
    add(seasons, batch.season, batch.siteId);
    sitesOfMethod.set(batch.methodKey, (sitesOfMethod.get(batch.methodKey) ?? new Set()).add(batch.siteId));
    if (!firstOfSite.has(batch.siteId)) firstOfSite.set(batch.siteId, at);
  }
  return { methods, species, materials, seasons, sitesOfMethod, firstOfSite, levelledOut };
}
