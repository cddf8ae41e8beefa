import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { FieldError } from '@/lib/base/result';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { clusterOfRun } from '../comparison/cluster-of-run';
import { parseComparisonQuery } from '../comparison/comparison-filter.input';
import { dayProblems } from '../comparison/day-problems';
import type { Period } from '../production/read-production';
import { grouped } from '../programme/grouped';
import { readSales } from '../programme/read-sales';
import { type CostedBatch, type CostGroup, costGroup, missingParts } from './cost-group';
import { costMethodKey, readBatchCosts } from './read-batch-costs';

export type CostsAnswer = {
  readonly period: Period;
  readonly currency: string;
  /** Null: work is not in the sums, it is shown in minutes. */
  readonly labourMinorPerHour: number | null;
  readonly batches: number;
  readonly fullBatches: number;
  readonly missing: CostGroup['missing'];
  /** Keys: method id, `mixed`, `second-life`, `none`; site id. */
  readonly methods: readonly CostGroup[];
  readonly sites: readonly CostGroup[];
  /** All of them together; its key is `all`. */
  readonly all: CostGroup;
  readonly methodNames: ReadonlyMap<string, { readonly en: string; readonly es: string }>;
  readonly siteNames: ReadonlyMap<string, string>;
};

type Query = Record<string, string | string[] | undefined>;

const daysBack = 365;

/** The batches that a question of costs is about, and the money they are told in. */
export type CostsScope = Pick<CostsAnswer, 'period' | 'currency' | 'labourMinorPerHour'> & {
  /** What is wrong with the days asked for; the costs are of `period` all the same. */
  readonly problems: readonly FieldError[];
};

/** What an address asks about: the batches inoculated in a period, a year unless said. */
export async function readCostsScope(
  { db, actor }: ReadContext,
  query: Query,
  now: Date,
): Promise<CostsScope> {
  const network = await db.network.findFirstOrThrow({ where: { id: actor.networkId } });
  const { currency, labourMinorPerHour } = network;
  const today = todayInZone(network.timeZone, now);
  const asked = parseComparisonQuery(query);
  const usual = { from: addDays(today, -daysBack), to: today };
  const ends: [string, string] = [asked.from ?? usual.from, asked.to ?? usual.to];
  const [from, to] = ends[0] <= ends[1] ? ends : [ends[1], ends[0]];
  return { period: { from, to }, problems: dayProblems(query, usual), currency, labourMinorPerHour };
}

/** What a kilogram cost, by method and site, of the batches of `readCostsScope` that are closed. */
export async function readCosts(context: ReadContext, query: Query, now: Date): Promise<CostsAnswer> {
  const { db } = context;
  const { period, currency, labourMinorPerHour } = await readCostsScope(context, query, now);
  const costed = await readBatchCosts(context, period, currency, labourMinorPerHour);
  const prices = await sitePrices(context, period, currency);
  const cluster = clusterOfRun(costed.map(({ row, runIds }) => ({ id: row.id, runIds })));
  const batches = costed.map(
    ({ row, cost }): CostedBatch => ({
      ...{ id: row.id, siteId: row.siteId, freshGrams: row.freshGrams, method: costMethodKey(row) },
      run: cluster.get(row.id) ?? row.id,
      cost,
      soldMinorPerKg: prices.get(row.siteId) ?? null,
    }),
  );
  const groups = (key: (batch: CostedBatch) => string, by: 'site' | 'run') =>
    [...grouped(batches, key)].map(([name, some]) => costGroup(name, some, by));
  const methods = await db.method.findMany({ select: { id: true, nameEn: true, nameEs: true } });
  const sites = await db.site.findMany({ select: { id: true, name: true } });
  return {
    ...{ period, currency, labourMinorPerHour, batches: batches.length },
    fullBatches: batches.filter(({ cost }) => cost.kind === 'full').length,
    missing: missingParts(batches),
    methods: groups(({ method }) => method, 'site'),
    sites: groups(({ siteId }) => siteId, 'run'),
    all: costGroup('all', batches, 'site'),
    methodNames: new Map(methods.map(({ id, nameEn, nameEs }) => [id, { en: nameEn, es: nameEs }])),
    siteNames: new Map(sites.map(({ id, name }) => [id, name])),
  };
}

/** What each site was paid for a kilogram in the period, in minor units, as far as it recorded sales. */
async function sitePrices(context: ReadContext, period: Period, currency: string) {
  const sales = (await readSales(context, period)).filter((row) => row.currency === currency);
  return new Map(
    [...grouped(sales, ({ siteId }) => siteId)].map(([siteId, same]) => {
      const grams = same.reduce((sum, row) => sum + row.grams, 0);
      return [siteId, (same.reduce((sum, row) => sum + row.amountMinor, 0) * 1000) / grams];
    }),
  );
}
