import { addDays } from '@/lib/growing/calendar-date';
import { logCrop } from '../story/crops';
import type { StorySite } from '../story/sites';
import { truths } from '../story/truths';
import { between } from './pick';
import type { PlanState } from './plan-bag-batch';
import { lotInUse } from './plan-spawn-lots';
import type { PlannedBatch } from './story-plan';

/** A set of inoculated shiitake logs, years from its end: nothing for about a year, then a few pickings a season. */
export function planLogs(state: PlanState, site: StorySite, index: number): PlannedBatch {
  const { today } = state;
  const random = state.streams('logs', site.code, index);
  const inoculatedOn = addDays(state.start, between(random, 10, truths.seasons * 365 - 60));
  const unitCount = between(random, 10, 30);
  const past = (date: string) => date <= today;
  const day = (days: number) => addDays(inoculatedOn, days);
  const pickings = [400, 430, 520, 760, 800, 890, 1_000].map((days) => days + between(random, -10, 10));
  const contaminated = random.binomial(unitCount, 0.04);
  return {
    siteCode: site.code,
    speciesCode: logCrop.speciesCode,
    container: 'log',
    materialCode: logCrop.materialCode,
    method: 'untreated',
    runKey: null,
    spawnLotCode: lotInUse(state.lots, logCrop.speciesCode, inoculatedOn).code,
    inoculatedOn,
    unitCount,
    wetGrams: null,
    spawnGrams: unitCount * 60,
    moistureSource: 'none',
    moisturePercent: null,
    bedAreaCm2: null,
    looks: [day(120), day(370)].filter(past),
    findings:
      contaminated > 0 && past(day(200))
        ? [{ date: day(200), units: contaminated, sign: 'other', cropping: false }]
        : [],
    colonisedOn: past(day(300)) ? day(300) : null,
    weighings: pickings
      .map((days, index) => ({
        date: day(days),
        flush: index + 1,
        grams: Math.round(
          ((unitCount - contaminated) * logCrop.gramsPerLogYear * Math.exp(0.3 * random.normal())) / 3,
        ),
      }))
      .filter((weighing) => past(weighing.date)),
    lost: null,
    closedOn: null,
    notWeighed: false,
  };
}
