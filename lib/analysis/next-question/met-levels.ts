import type { ModelBatch } from '../adjusted/model-batch';
import type { LevelledOut } from '../adjusted/model-terms';

/** What the batches that a model is fitted to have of each level, counted once. */
export type MetLevels = {
  readonly methods: ReadonlyMap<string, number>;
  readonly species: ReadonlyMap<string, number>;
  readonly materials: ReadonlyMap<string, number>;
  readonly seasons: ReadonlyMap<string, number>;
  /** Sites that have used each method. */
  readonly sitesOfMethod: ReadonlyMap<string, ReadonlySet<string>>;
  /** The place of each site's first batch among the terms' values. */
  readonly firstOfSite: ReadonlyMap<string, number>;
  readonly levelledOut: LevelledOut;
};

/** Levels are named by as few batches as this: fewer are a handful of chances. Our choice. */
export const fewestOfLevel = 6;

export function metLevels(batches: readonly ModelBatch[], levelledOut: LevelledOut): MetLevels {
  const [methods, species, materials, seasons] = [0, 0, 0, 0].map(() => new Map<string, number>()) as [
    Map<string, number>,
    Map<string, number>,
    Map<string, number>,
    Map<string, number>,
  ];
  const sitesOfMethod = new Map<string, Set<string>>();
  const firstOfSite = new Map<string, number>();
  const add = (map: Map<string, number>, level: string) => map.set(level, (map.get(level) ?? 0) + 1);
  for (const [at, batch] of batches.entries()) {
    add(methods, batch.methodKey);
    add(species, batch.speciesId);
    add(materials, batch.materialId);
    add(seasons, batch.season);
    sitesOfMethod.set(batch.methodKey, (sitesOfMethod.get(batch.methodKey) ?? new Set()).add(batch.siteId));
    if (!firstOfSite.has(batch.siteId)) firstOfSite.set(batch.siteId, at);
  }
  return { methods, species, materials, seasons, sitesOfMethod, firstOfSite, levelledOut };
}
