import 'server-only';
import { z } from 'zod';
import type { ReadContext } from '@/lib/access/context';
import type { FieldError } from '@/lib/base/result';
import { readJoiningRuns } from '../outcomes/read-joining-runs';
import { methodsOfWhole, rowOfWhole } from '../outcomes/remembered-rows';
import { rememberedWholeSums } from '../outcomes/remembered-sums';
import { clusterOfRun } from './cluster-of-run';
import { type Comparison, compare } from './compare';
import { type ComparisonChoices, readComparisonChoices } from './comparison-choices';
import { type ComparisonFilter, completeFilter, parseComparisonQuery } from './comparison-filter.input';
import { dayProblems } from './day-problems';
import { judgeBatches } from './judged-batch';
import { readBatchRows } from './read-batch-rows';
import { readRememberedSiteRows } from './remembered-site-rows';
import { mostSites, sitesPerPage } from './sites-per-page';

export type ComparisonPage = {
  readonly choices: ComparisonChoices;
  readonly filter: ComparisonFilter;
  /** What is wrong with the days asked for; the figures are for those of `filter` all the same. */
  readonly problems: readonly FieldError[];
  /** `sites` and `cells` of the sites of this page, by name; the latter are worked out when they are looked at. */
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
  const asOf = now.toISOString();
  const about = { choices, filter, problems: dayProblems(query, choices.defaults) };
  if (filter.site !== undefined) {
    // One site has no sum of its own kept by treatment run, and is whole on its page.
    const facts = await readBatchRows(context, { ...filter, sites: [filter.site] });
    const clusters = clusterOfRun([...facts, ...(await readJoiningRuns(context, filter))]);
    const comparison = compare(judgeBatches(facts, choices.today, clusters), filter, asOf);
    return {
      ...about,
      ...{ comparison, page: 1, pages: 1, siteCount: Math.min(1, facts.length), perPage: mostSites },
    };
  }
  const { today } = choices;
  const whole = await rememberedWholeSums(context, filter, today);
  const chosen = new Set(whole.sums.sites);
  const sites = choices.sites.filter(({ id }) => chosen.has(id));
  const total = rowOfWhole(whole, { filter, today, asOf });
  const { n, leftOut } = total.contamination;
  const perPage = sitesPerPage(
    leftOut.reduce((sum, { batches }) => sum + batches, n.batches),
    sites.length,
  );
  const pages = Math.max(1, Math.ceil(sites.length / perPage));
  const page = Math.min(pageNumber.parse(query.page), pages);
  const shown = sites.slice((page - 1) * perPage, page * perPage).map(({ id }) => id);
  const own = await readRememberedSiteRows(context, filter, shown, whole, { today, asOf });
  const comparison: Comparison = {
    total,
    methods: methodsOfWhole(whole, { filter, today, asOf }),
    sites: own.sites,
    get cells() {
      return own.cells;
    },
  };
  return { ...about, comparison, page, pages, siteCount: sites.length, perPage };
}
