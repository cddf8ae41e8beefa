import type { FixedTerm, NewRow } from '@/lib/stats/mixed/design/fixed-term';
import type { CountedBatch } from '../adjusted/contamination-request';
import { shareName } from '../adjusted/model-terms';

/** Units of one method and species at one site, with the rows that predict them there and at a typical site. */
export type SiteCell = {
  /** The same for all batches of the cell. */
  readonly key: string;
  readonly siteId: string;
  readonly units: number;
  readonly there: NewRow;
  readonly typical: NewRow;
};

/** Where a batch stands: its site, method and species. */
export const cellKey = ({ siteId, methodKey, speciesId }: CountedBatch): string =>
  [siteId, methodKey, speciesId].join(' ');

/** What each site fills, method by species, as rows of the model. Batches come in the order of the fixed terms' values. */
export function siteCells(batches: readonly CountedBatch[], fixed: readonly FixedTerm[]): SiteCell[] {
  const cells = new Map<string, SiteCell>();
  const means = new Map(
    fixed.flatMap((term) =>
      term.kind === 'covariate' && term.name.startsWith(shareName) ? [[term.name, meanOf(term.values)]] : [],
    ),
  );
  batches.forEach((batch, row) => {
    const key = cellKey(batch);
    const known = cells.get(key);
    cells.set(key, known ? { ...known, units: known.units + batch.units } : cellOf(batch, row, fixed, means));
  });
  return [...cells.values()];
}

function meanOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let at = 0; at < values.length; at += 1) sum += values[at] ?? 0;
  return sum / values.length;
}

/** @param means of the columns that belong to a site's own shares: what they are at a typical site. */
function cellOf(
  batch: CountedBatch,
  row: number,
  fixed: readonly FixedTerm[],
  means: ReadonlyMap<string, number>,
): SiteCell {
  const there: Record<string, string | number> = {};
  const typical: Record<string, string | number> = {};
  for (const term of fixed) {
    if (term.kind === 'interaction') continue;
    if (term.kind === 'factor') {
      const value = term.values[row] ?? '';
      there[term.name] = value;
      typical[term.name] = value;
      continue;
    }
    const { values } = term;
    there[term.name] = values[row] ?? 0;
    typical[term.name] = means.get(term.name) ?? values[row] ?? 0;
  }
  const { siteId, methodKey } = batch;
  return {
    key: cellKey(batch),
    siteId,
    units: batch.units,
    there: { ...there, site: siteId, 'site x method': `${siteId} ${methodKey}` },
    typical,
  };
}
