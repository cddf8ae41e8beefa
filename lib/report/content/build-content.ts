import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type MethodFigures, readMethodFigures } from '@/lib/analysis/production/read-method-figures';
import { readPracticesTakenUp } from '@/lib/analysis/production/read-practices-taken-up';
import { type Period, readProduction, type SiteAmount } from '@/lib/analysis/production/read-production';
import { readSpeciesHarvest } from '@/lib/analysis/production/read-species-harvest';
import { amountsOf, cellsOf } from './cells-of';
import { changeRow } from './change-rows';
import type { FunderReportContent, ReportTable } from './funder-report';
import { practiceRows } from './practice-rows';
import { mayBeShown, type ProtectionRule, protectCells } from './protect-cells';
import { proteinRows } from './protein-rows';
import type { ReportIndicator } from './report-indicators.input';

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

type Totals = Pick<FunderReportContent, 'harvest' | 'residues'>;

/** Harvest and residues of one period, protected. */
async function totalsOf(
  production: Awaited<ReturnType<typeof readProduction>>,
  rule: ProtectionRule,
): Promise<Totals> {
  const table = (cells: ReturnType<typeof cellsOf>): ReportTable => protectCells(cells, rule);
  return {
    harvest: table(cellsOf(production.destinations, (row) => row.destination)),
    residues: table(cellsOf(production.residues, (row) => row.material)),
  };
}

/** Which part of the records a report is about. */
export type ReportScope = {
  /** The programme that the report is for, where it has a name of its own. */
  readonly programme: string | null;
  readonly period: Period;
  readonly baseline: Period | undefined;
  readonly indicators: readonly ReportIndicator[];
};

/** Works out a report over a period. Cells that would tell about a single site are protected here, before it is stored. */
export async function buildContent(
  context: ReadContext,
  { programme, period, baseline, indicators }: ReportScope,
  now: Date,
): Promise<FunderReportContent> {
  const { db, actor } = context;
  const network = await db.network.findFirstOrThrow({ where: { id: actor.networkId } });
  const rule = { minSites: network.cellMinSites, topTwoPercent: network.cellTopTwoPercent };
  const chosen = new Set(indicators);
  const production = await readProduction(context, period);
  const totals = await totalsOf(production, rule);
  const before = baseline && (await totalsOf(await readProduction(context, baseline), rule));
  const methods = chosen.has('methods') ? await readMethodFigures(context, period, now) : [];
  return {
    form: 2,
    networkName: network.name,
    ...(programme === null ? {} : { programme }),
    ...period,
    builtAt: now.toISOString(),
    indicators: [...indicators],
    ...(baseline === undefined ? {} : { baseline }),
    sitesActive: production.sitesActive.length,
    peopleActive: production.peopleActive,
    batchesStarted: production.batchesStarted,
    batchesWithoutDryMass: production.batchesWithoutDryMass,
    rule,
    ...totals,
    assumedResidues: [
      ...new Set(production.residues.filter((row) => row.assumed).map((row) => row.material)),
    ].sort(),
    protein: chosen.has('protein')
      ? proteinRows(await readSpeciesHarvest(context, period), totals.harvest, rule)
      : [],
    practices: chosen.has('practices') ? practiceRows(await readPracticesTakenUp(context, period), rule) : [],
    changes: before
      ? [
          changeRow('harvest', before.harvest.total, totals.harvest.total),
          changeRow('residues', before.residues.total, totals.residues.total),
        ]
      : [],
    methods: methods.map((row) => methodRow(row, rule)),
  };
}
