import { type ComparedRow, compareShown } from '../comparison/compare';
import type { ComparisonFilter } from '../comparison/comparison-filter.input';
import type { JudgedBatch } from '../comparison/judged-batch';
import { grouped } from '../programme/grouped';

export type Raw = Pick<ComparedRow, 'contamination' | 'yield'>;

/** A site's own judged batches and their raw figures, by method. */
export type SiteRecords = {
  readonly of: (method: string) => readonly JudgedBatch[];
  readonly rawOf: (method: string) => Raw;
};

/** @param own the judged batches of the site. Each figure is worked out when it is first asked for, and once. */
export function siteRecords(
  own: readonly JudgedBatch[],
  siteId: string,
  filter: ComparisonFilter,
  asOf: string,
): SiteRecords {
  const byMethod = grouped(own, ({ methodKey }) => methodKey);
  const of = (method: string) => byMethod.get(method) ?? [];
  const known = new Map<string, Raw>();
  return {
    of,
    rawOf: (method) => {
      const raw = known.get(method) ?? compareShown(of(method), { ...filter, method, site: siteId }, asOf);
      known.set(method, raw);
      return raw;
    },
  };
}
