import { type ComparedRow, compareShown } from '../comparison/compare';
import type { ComparisonFilter } from '../comparison/comparison-filter.input';
import type { JudgedBatch } from '../comparison/judged-batch';
import { grouped } from '../programme/grouped';

export type Raw = Pick<ComparedRow, 'contamination' | 'yield'>;

/** A site's own judged batches and their raw figures, by method. */
export type SiteRecords = {
  readonly all: readonly JudgedBatch[];
  readonly of: (method: string) => readonly JudgedBatch[];
  readonly rawOf: (method: string) => Raw;
};

/** @param own the judged batches of the site. Figures of the methods that it has used are worked out at once. */
export function siteRecords(
  own: readonly JudgedBatch[],
  siteId: string,
  filter: ComparisonFilter,
  asOf: string,
): SiteRecords {
  const byMethod = grouped(own, ({ methodKey }) => methodKey);
  const figures = (method: string, some: readonly JudgedBatch[]) =>
    compareShown(some, { ...filter, method, site: siteId }, asOf);
  const known = new Map([...byMethod].map(([method, some]) => [method, figures(method, some)]));
  return {
    all: own,
    of: (method) => byMethod.get(method) ?? [],
    rawOf: (method) => known.get(method) ?? figures(method, []),
  };
}
