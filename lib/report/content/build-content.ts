import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { readCosts } from '@/lib/analysis/costs/read-costs';
import { groupsWithoutMethod, readMethodFigures } from '@/lib/analysis/production/read-method-figures';
import { readPracticesTakenUp } from '@/lib/analysis/production/read-practices-taken-up';
import type { Period } from '@/lib/analysis/production/read-production';
import { readSpeciesHarvest } from '@/lib/analysis/production/read-species-harvest';
import { readAnswers } from '@/lib/analysis/programme/read-answers';
import { readPractices } from '@/lib/analysis/programme/read-practices';
import { readTrainings } from '@/lib/analysis/programme/read-trainings';
import { isResidue } from '@/lib/growing/residue-kinds';
import { changeRows } from './change-rows';
import { costPart } from './cost-part';
import type { FunderReportContent } from './funder-report';
import { glancePart } from './glance-part';
import type { GroundTables, ReportGround } from './ground';
import { methodPart } from './method-part';
import { type PeriodParts, readPeriodParts } from './period-parts';
import { practicePart } from './practice-part';
import type { ProtectionRule } from './protect-cells';
import { proteinPart } from './protein-part';
import type { ReportIndicator } from './report-indicators.input';
import { sitesTold } from './sites-told';
import { trainingsTold } from './training-part';

/** Which part of the records a report is about. */
export type ReportScope = {
  /** The programme that the report is for, where it has a name of its own. */
  readonly programme: string | null;
  readonly period: Period;
  readonly baseline: Period | undefined;
  readonly indicators: readonly ReportIndicator[];
};

export type BuiltReport = { readonly content: FunderReportContent; readonly ground: ReportGround };

type Chosen = Pick<FunderReportContent, 'protein' | 'practices' | 'adopted' | 'methods'> &
  Partial<Pick<FunderReportContent, 'trainings' | 'costs'>>;

/** Indicators beyond the totals, each only where it is chosen. */
async function readChosen(
  context: ReadContext,
  { period, indicators }: ReportScope,
  totals: PeriodParts,
  rule: ProtectionRule,
  now: Date,
): Promise<{ content: Chosen; ground: ReportGround }> {
  const chosen = new Set(indicators);
  const protein = chosen.has('protein')
    ? proteinPart(await readSpeciesHarvest(context, period), totals.harvest, rule)
    : undefined;
  const practices = chosen.has('practices')
    ? practicePart(await readPracticesTakenUp(context, period), await readPractices(context, period), rule)
    : undefined;
  const trainings = chosen.has('trainings')
    ? trainingsTold(await readTrainings(context, period), await readAnswers(context, period), rule)
    : undefined;
  const costs = chosen.has('costs')
    ? costPart(await readCosts(context, period, now), groupsWithoutMethod, rule)
    : undefined;
  const methods = chosen.has('methods')
    ? methodPart(await readMethodFigures(context, period, now), rule)
    : undefined;
  const ground: [ReportIndicator, GroundTables | undefined][] = [
    ['protein', protein?.ground],
    ['practices', practices?.ground],
    ['costs', costs?.ground],
    ['methods', methods?.ground],
  ];
  return {
    content: {
      protein: protein?.content.protein ?? [],
      practices: practices?.content.practices ?? [],
      adopted: practices?.content.adopted ?? [],
      methods: methods?.content.methods ?? [],
      ...(trainings === undefined ? {} : { trainings }),
      ...(costs === undefined ? {} : costs.content),
    },
    ground: Object.fromEntries(ground.filter(([, tables]) => tables !== undefined)),
  };
}

const tablesOf = ({ harvest, residues, sales }: PeriodParts): GroundTables => ({
  harvest: harvest.known,
  residues: residues.known,
  ...sales.ground,
});

/** Works out a report over a period. Cells that would tell about a single site are protected here, before it is stored. */
export async function buildContent(
  context: ReadContext,
  scope: ReportScope,
  now: Date,
): Promise<BuiltReport> {
  const { db, actor } = context;
  const { programme, period, baseline, indicators } = scope;
  const network = await db.network.findFirstOrThrow({ where: { id: actor.networkId } });
  const rule = { minSites: network.cellMinSites, topTwoPercent: network.cellTopTwoPercent };
  const totals = await readPeriodParts(context, period, rule);
  const before = baseline && (await readPeriodParts(context, baseline, rule));
  const chosen = await readChosen(context, scope, totals, rule, now);
  const { production, harvest, residues, sales } = totals;
  const glance = glancePart(production, rule);
  const told = { harvest: harvest.table, residues: residues.table, sales: sales.content.sales };
  return {
    content: {
      form: 2,
      networkName: network.name,
      ...(programme === null ? {} : { programme }),
      ...period,
      builtAt: now.toISOString(),
      indicators: [...indicators],
      ...(baseline === undefined ? {} : { baseline }),
      ...glance.content,
      sites: await sitesTold(context, production.sitesActive),
      batchesWithoutDryMass: production.batchesWithoutDryMass,
      rule,
      ...told,
      residuesLeftOut: [...residues.leftOut],
      sales: indicators.includes('sales') ? told.sales : [],
      assumedResidues: [
        ...new Set(
          production.residues
            .filter((row) => row.assumed && isResidue(row.material))
            .map((row) => row.material),
        ),
      ].sort(),
      ...chosen.content,
      changes: before
        ? changeRows(
            {
              harvest: before.harvest.table,
              residues: before.residues.table,
              sales: before.sales.content.sales,
            },
            told,
          ).filter(({ key }) => key === 'harvest' || indicators.some((indicator) => indicator === key))
        : [],
      carried: {},
    },
    ground: {
      glance: glance.ground,
      harvest: { harvest: harvest.known },
      residues: residues.ground,
      ...(indicators.includes('sales') ? { sales: sales.ground } : {}),
      ...(before ? { baseline: tablesOf(before) } : {}),
      ...chosen.ground,
    },
  };
}
