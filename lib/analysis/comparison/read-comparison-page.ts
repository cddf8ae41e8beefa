import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import { apartClusters } from '../outcomes/apart-clusters';
import { readApartRuns } from '../outcomes/read-apart-runs';
import { readOutcomeSums } from '../outcomes/read-outcome-sums';
import { rowOfSums } from '../outcomes/row-of-sums';
import { clusterOfRun } from './cluster-of-run';
import { type Comparison, compare } from './compare';
import { type ComparisonChoices, readComparisonChoices } from './comparison-choices';
import { type ComparisonFilter, completeFilter, parseComparisonQuery } from './comparison-filter.input';
import { judgeBatches } from './judged-batch';
import { readBatchRows } from './read-batch-rows';

/** So many sites have rows of their own on one page; totals are of all sites on every page. */
const sitesPerPage = 25;

export type ComparisonPage = {
  readonly choices: ComparisonChoices;
  readonly filter: ComparisonFilter;
  /** `sites` and `cells` of the sites of this page, by name. */
  readonly comparison: Comparison;
  /** From 1. */
  readonly page: number;
  readonly pages: number;
  readonly siteCount: number;
  readonly perPage: number;
};

const pageNumber = z.coerce.number().int().min(1).catch(1);

/**
 * The comparison that an address asks for, as of `now`; undefined while the network has no batch. Totals and methods
 * come from kept sums; only the batches of the sites that are shown are read one by one.
 */
export async function readComparisonPage(
  context: ReadContext,
  query: Record<string, string | string[] | undefined>,
  now: Date,
): Promise<ComparisonPage | undefined> {
  const choices = await readComparisonChoices(context, now);
  if (choices.defaults === undefined) return undefined;
  const filter = completeFilter(parseComparisonQuery(query), choices.defaults);
  const { today } = choices;
  const asOf = now.toISOString();
  const sums = await readOutcomeSums(context, filter, today);
  const apart = await readApartRuns(context, filter, today);
  const chosen = new Set(sums.sites);
  const sites = choices.sites.filter(({ id }) => chosen.has(id) && (filter.site ?? id) === id);
  const pages = Math.max(1, Math.ceil(sites.length / sitesPerPage));
  const page = Math.min(pageNumber.parse(query.page), pages);
  const shown = sites.slice((page - 1) * sitesPerPage, page * sitesPerPage).map(({ id }) => id);
  const facts = await readBatchRows(context, { ...filter, sites: shown });
  const clusters = clusterOfRun([...facts, ...apart]);
  const judged = judgeBatches(facts, today, clusters);
  const own = compare(judged, filter, asOf);
  const about = { choices, filter, page, pages, siteCount: sites.length, perPage: sitesPerPage };
  // One site has no sum of its own kept by treatment run, and is whole on its page.
  if (filter.site !== undefined) return { ...about, comparison: own };
  const whole = { sums, apart: apartClusters(apart, clusters), today };
  const keys = new Set([...sums.counted.map(([, key]) => key), ...sums.leftOut.map(([key]) => key)]);
  const methods = [...keys].filter((key) => (filter.method ?? key) === key);
  return {
    ...about,
    comparison: {
      total: rowOfSums(whole, filter, asOf),
      methods: methods.map((method) => rowOfSums(whole, { ...filter, method }, asOf)),
      sites: own.sites,
      cells: own.cells,
    },
  };
}
