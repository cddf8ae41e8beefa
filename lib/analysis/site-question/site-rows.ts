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
  batches.forEach((batch, row) => {
    const key = cellKey(batch);
    const known = cells.get(key);
    cells.set(key, known ? { ...known, units: known.units + batch.units } : cellOf(batch, row, fixed));
  });
  return [...cells.values()];
}

function cellOf(batch: CountedBatch, row: number, fixed: readonly FixedTerm[]): SiteCell {
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
    // What belongs to the site's own shares is the mean of all batches at a typical site.
    typical[term.name] = term.name.startsWith(shareName)
      ? Array.from({ length: values.length }, (_, at) => values[at] ?? 0).reduce(
          (sum, value) => sum + value,
          0,
        ) / values.length
      : (values[row] ?? 0);
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
