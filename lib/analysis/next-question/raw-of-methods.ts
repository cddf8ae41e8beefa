import { compareShown } from '../comparison/compare';
import type { ComparisonFilter } from '../comparison/comparison-filter.input';
import type { JudgedBatch } from '../comparison/judged-batch';
import { grouped } from '../programme/grouped';
import { type Raw, type SiteRecords, siteRecords } from './site-records';

/** What the records alone say of each method, without a model. */
export type RawOfMethods = {
  /** Of a method in the whole network. */
  readonly inNetwork: (method: string) => Raw;
  readonly atSite: (siteId: string) => SiteRecords;
};

/** @param judged in an order that does not depend on that of the records. */
export function rawOfMethods(
  judged: readonly JudgedBatch[],
  filter: ComparisonFilter,
  asOf: string,
): RawOfMethods {
  const everywhere = { ...filter, site: undefined };
  const ofMethod = new Map(
    [...grouped(judged, ({ methodKey }) => methodKey)].map(([method, some]) => [
      method,
      compareShown(some, { ...everywhere, method }, asOf),
    ]),
  );
  const none = compareShown([], { ...everywhere, method: undefined }, asOf);
  const ofSite = new Map(
    [...grouped(judged, ({ facts }) => facts.siteId)].map(([siteId, own]) => [
      siteId,
      siteRecords(own, siteId, filter, asOf),
    ]),
  );
  return {
    inNetwork: (method) => ofMethod.get(method) ?? none,
    atSite: (siteId) => ofSite.get(siteId) ?? siteRecords([], siteId, filter, asOf),
  };
}
