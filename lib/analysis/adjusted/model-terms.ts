import type { FixedTerm, RandomTerm } from '@/lib/stats/mixed/design/fixed-term';
import type { ModelBatch } from './model-batch';

/** What is levelled out besides the site: 'species' always where there are several. */
export type LevelledOut = { readonly material: boolean; readonly season: boolean };

/**
 * How sites are levelled out. `within`: by comparing methods within sites only (the share of each method at a site is a
 * covariate, so that what sites with much of a method have in common does not count as the method's: Mundlak 1978,
 * Econometrica 46:69-85, citation from memory). `partly`: by the random effect of the site alone, which takes out only part
 * of it where sites chose their methods.
 */
export type SiteLevelling = 'within' | 'partly';

const several = (values: readonly string[]) => new Set(values).size > 1;

/** 0/1 columns of all levels but the first, as covariates: means are then taken at the mix of levels that was grown. */
function indicators(name: string, values: readonly string[]): FixedTerm[] {
  return [...new Set(values)]
    .sort()
    .slice(1)
    .map((level) => ({
      kind: 'covariate',
      name: `${name} ${level}`,
      values: Uint8Array.from(values, (value) => (value === level ? 1 : 0)),
    }));
}

/** The share of each method but the first among the batches of each batch's site. */
function siteShares(batches: readonly ModelBatch[]): FixedTerm[] {
  const ofSite = new Map<string, number>();
  const ofCell = new Map<string, number>();
  for (const { siteId, methodKey } of batches) {
    ofSite.set(siteId, (ofSite.get(siteId) ?? 0) + 1);
    ofCell.set(`${siteId} ${methodKey}`, (ofCell.get(`${siteId} ${methodKey}`) ?? 0) + 1);
  }
  return [...new Set(batches.map(({ methodKey }) => methodKey))]
    .sort()
    .slice(1)
    .map((method) => ({
      kind: 'covariate',
      name: `${shareName} ${method}`,
      values: Float64Array.from(
        batches,
        ({ siteId }) => (ofCell.get(`${siteId} ${method}`) ?? 0) / (ofSite.get(siteId) ?? 1),
      ),
    }));
}

/** How the covariates begin that are a site's own and therefore part of how sites differ. */
export const shareName = 'share of';

/** Fixed part: the method, and as covariates whatever is levelled out. */
export function fixedTerms(
  batches: readonly ModelBatch[],
  levelledOut: LevelledOut,
  sites: SiteLevelling,
): FixedTerm[] {
  const method = batches.map(({ methodKey }) => methodKey);
  return [
    ...(several(method) ? [{ kind: 'factor' as const, name: 'method', values: method }] : []),
    ...indicators(
      'species',
      batches.map(({ speciesId }) => speciesId),
    ),
    ...(levelledOut.material
      ? indicators(
          'material',
          batches.map(({ materialId }) => materialId),
        )
      : []),
    ...(levelledOut.season
      ? indicators(
          'season',
          batches.map(({ season }) => season),
        )
      : []),
    ...(sites === 'within' && several(batches.map(({ siteId }) => siteId)) ? siteShares(batches) : []),
  ];
}

export type RandomTermName = 'site' | 'site x method' | 'spawn lot' | 'material lot' | 'run' | 'batch';

const labelOf: Readonly<Record<RandomTermName, (batch: ModelBatch) => string>> = {
  site: ({ siteId }) => siteId,
  'site x method': ({ siteId, methodKey }) => `${siteId} ${methodKey}`,
  'spawn lot': ({ spawnLot }) => spawnLot,
  'material lot': ({ materialLot }) => materialLot,
  run: ({ run }) => run,
  batch: ({ id }) => id,
};

/** The level of a term that each batch has. */
export function termLabels(batches: readonly ModelBatch[], name: RandomTermName): string[] {
  return batches.map(labelOf[name]);
}

/** Random intercepts that the data can tell apart: at least two levels, and fewer than batches unless it is the batch. */
export function randomTerms(batches: readonly ModelBatch[], names: readonly RandomTermName[]): RandomTerm[] {
  const terms = names.map((name) => ({ name, values: termLabels(batches, name) }));
  const seen: string[][] = [];
  return terms.filter(({ name, values }) => {
    const levels = new Set(values).size;
    if (levels < 2 || (name !== 'batch' && levels === values.length)) return false;
    // Two terms that split the batches alike cannot be told apart; the first one named stands for both.
    const codes = groupsOf(values);
    if (seen.some((other) => other.every((code, row) => code === codes[row]))) return false;
    seen.push(codes);
    return true;
  });
}

/** The first row's number of each row's group: equal for terms that group alike, whatever their labels. */
function groupsOf(values: readonly string[]): string[] {
  const first = new Map<string, string>();
  return values.map((value, row) => {
    const known = first.get(value) ?? String(row);
    first.set(value, known);
    return known;
  });
}
