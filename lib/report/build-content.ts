import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type MethodFigures, readMethodFigures } from '@/lib/analysis/production/read-method-figures';
import { type Period, readProduction, type SiteAmount } from '@/lib/analysis/production/read-production';
import type { FunderReportContent } from './funder-report';
import { type Cell, mayBeShown, type ProtectionRule, protectCells } from './protect-cells';

function amountsOf(rows: readonly SiteAmount[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { siteId, grams } of rows) sums.set(siteId, (sums.get(siteId) ?? 0) + grams);
  return sums;
}

function cellsOf<R extends SiteAmount>(rows: readonly R[], keyOf: (row: R) => string): Cell[] {
  const keys = [...new Set(rows.map(keyOf))].sort();
  return keys.map((key) => ({ key, bySite: amountsOf(rows.filter((row) => keyOf(row) === key)) }));
}

function methodRow(row: MethodFigures, rule: ProtectionRule): FunderReportContent['methods'][number] {
  const { container, methodEn, methodEs } = row;
  const shown = (figure: MethodFigures['yield'], amounts: readonly SiteAmount[]) =>
    mayBeShown(amountsOf(amounts), rule) ? figure : ({ kind: 'protected' } as const);
  return {
    container,
    methodEn,
    methodEs,
    contamination: shown(row.contamination, row.unitsBySite),
    yield: shown(row.yield, row.yieldBySite),
  };
}

/** Works out a report over a period. Cells that would tell about a single site are protected here, before it is stored. */
export async function buildContent(
  context: ReadContext,
  period: Period,
  now: Date,
): Promise<FunderReportContent> {
  const { db, actor } = context;
  const network = await db.network.findFirstOrThrow({ where: { id: actor.networkId } });
  const rule = { minSites: network.cellMinSites, topTwoPercent: network.cellTopTwoPercent };
  const production = await readProduction(context, period);
  const methods = await readMethodFigures(context, period, now);
  const residues = protectCells(
    cellsOf(production.residues, (row) => row.material),
    rule,
  );
  return {
    form: 1,
    networkName: network.name,
    ...period,
    builtAt: now.toISOString(),
    sitesActive: production.sitesActive.length,
    peopleActive: production.peopleActive,
    batchesStarted: production.batchesStarted,
    batchesWithoutDryMass: production.batchesWithoutDryMass,
    rule,
    harvest: protectCells(
      cellsOf(production.destinations, (row) => row.destination),
      rule,
    ),
    residues,
    assumedResidues: [
      ...new Set(production.residues.filter((row) => row.assumed).map((row) => row.material)),
    ].sort(),
    methods: methods.map((row) => methodRow(row, rule)),
  };
}
