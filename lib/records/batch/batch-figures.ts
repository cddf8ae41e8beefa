import { type Answer, cannotCompute } from '@/lib/growing/answer';
import {
  type BiologicalEfficiency,
  biologicalEfficiency,
  whyNoBe,
} from '@/lib/growing/biological-efficiency';
import { daysBetween } from '@/lib/growing/calendar-date';
import { type ContaminationOutcome, contaminationOutcome } from '@/lib/growing/contamination-outcome';
import { flushShares } from '@/lib/growing/flush-shares';
import { asCalendarDate } from '../fields/stored-date';
import type { BatchRow } from './batch-include';
import { type ContainerYield, containerYield } from './container-yield';
import { type UnitLedger, unitLedger } from './unit-ledger';

export type BatchFigures = ContainerYield & {
  readonly units: UnitLedger;
  readonly contamination: Answer<ContaminationOutcome>;
  readonly freshGrams: number;
  readonly weighings: number;
  /** Fresh mass as BE takes it: null when nothing was weighed and nothing says that nothing was picked. */
  readonly be: Answer<BiologicalEfficiency>;
  readonly flushes: readonly {
    readonly flush: number;
    readonly grams: number;
    readonly sharePercent: number;
  }[];
  /** Days from inoculation to today, to the closing, and to first and last harvest. */
  readonly days: {
    readonly sinceInoculation: number;
    readonly toFirstHarvest: number | null;
    readonly toLastHarvest: number | null;
  };
};

/** Works out what a batch's page shows of it; `today` is the site's date. Voided entries are left out. */
export function batchFigures(row: BatchRow, moved: number, today: string): BatchFigures {
  const inoculatedOn = asCalendarDate(row.inoculatedOn);
  const closedOn = row.closedOn === null ? null : asCalendarDate(row.closedOn);
  const live = <T extends { voidedAt: Date | null }>(rows: readonly T[]) =>
    rows.filter(({ voidedAt }) => voidedAt === null);
  const findings = live(row.findings).map((finding) => ({ ...finding, followUps: live(finding.followUps) }));
  const lines = row.weighingLines.filter(({ weighing }) => weighing.voidedAt === null);
  const freshGrams = lines.reduce((sum, line) => sum + line.freshGrams, 0);
  const picked = lines.map(({ weighing }) => asCalendarDate(weighing.weighedOn)).sort();
  const last = picked.at(-1);
  const judged = row.contaminationAssessedOn;
  const finished = closedOn !== null;
  const known = lines.length > 0 || row.noHarvest === 'none_picked' || !finished ? freshGrams : null;
  const nothingYet = lines.length === 0 && !finished ? cannotCompute('no-harvest-yet') : null;
  const noBe = whyNoBe(row.containerKind, finished);
  const shares = flushShares(lines.map(({ flush, freshGrams: grams }) => ({ flush, grams })));
  return {
    units: unitLedger({ inoculated: row.unitCount, findings, losses: live(row.losses), moved }),
    contamination:
      judged === null
        ? cannotCompute('days-not-positive')
        : contaminationOutcome({
            inoculatedUnits: row.unitCount,
            inoculatedOn,
            windowDays: daysBetween(inoculatedOn, asCalendarDate(judged)),
            findings: findings.map(({ foundOn, units }) => ({ on: asCalendarDate(foundOn), units })),
            losses: live(row.losses).map((loss) => ({
              on: asCalendarDate(loss.lostOn),
              units: loss.units - loss.contaminatedUnits,
            })),
            looks: live(row.looks).map(({ lookedOn }) => asCalendarDate(lookedOn)),
            today,
          }),
    freshGrams,
    weighings: lines.length,
    be: noBe !== null ? cannotCompute(noBe) : (nothingYet ?? biologicalEfficiency(known, row.dryGrams)),
    ...containerYield(
      {
        ...{ containerKind: row.containerKind, unitCount: row.unitCount, bedAreaCm2: row.bedAreaCm2 },
        ...{ inoculatedOn, closedOn, freshGrams: known, anyWeighed: lines.length > 0 },
      },
      today,
    ),
    flushes: shares.kind === 'value' ? shares.value : [],
    days: {
      sinceInoculation: daysBetween(inoculatedOn, closedOn ?? today),
      toFirstHarvest: picked[0] === undefined ? null : daysBetween(inoculatedOn, picked[0]),
      toLastHarvest: last === undefined ? null : daysBetween(inoculatedOn, last),
    },
  };
}
