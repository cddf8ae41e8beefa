import { addDays } from '@/lib/growing/calendar-date';
import { bedCrop } from '../story/crops';
import type { StorySite } from '../story/sites';
import { truths } from '../story/truths';
import { between, logistic } from './pick';
import type { PlanState } from './plan-bag-batch';
import { lotInUse } from './plan-spawn-lots';
import type { PlannedBatch } from './story-plan';

/** A layered bed of wine cap on chips: one unit, found failed or not, picked over months. */
export function planBed(state: PlanState, site: StorySite, siteLogit: number, index: number): PlannedBatch {
  const { today } = state;
  const random = state.streams('bed', site.code, index);
  const inoculatedOn = addDays(state.start, between(random, 10, truths.seasons * 365 - 40));
  const area = between(random, 10_000, 40_000);
  const failed = random.next() < logistic(truths.baseLogit + truths.methodLogit.untreated + siteLogit);
  const past = (date: string) => date <= today;
  const day = (days: number) => addDays(inoculatedOn, days);
  const grams = Math.round(
    ((bedCrop.gramsPerM2 * area) / 10_000) * Math.exp(0.35 * random.normal()) * (failed ? 0.15 : 1),
  );
  const weighings = [
    { date: day(between(random, 70, 95)), flush: 1, grams: Math.round(grams * 0.5) },
    { date: day(between(random, 110, 130)), flush: 2, grams: Math.round(grams * 0.3) },
    { date: day(between(random, 320, 345)), flush: 3, grams: Math.round(grams * 0.2) },
  ];
  return {
    siteCode: site.code,
    speciesCode: bedCrop.speciesCode,
    container: 'bed',
    materialCode: bedCrop.materialCode,
    method: 'untreated',
    runKey: null,
    spawnLotCode: lotInUse(state.lots, bedCrop.speciesCode, inoculatedOn).code,
    inoculatedOn,
    unitCount: 1,
    wetGrams: Math.round((area / 10_000) * 45_000),
    spawnGrams: Math.round((area / 10_000) * 550),
    moistureSource: 'none',
    moisturePercent: null,
    bedAreaCm2: area,
    looks: [day(30), day(95)].filter(past),
    findings: failed && past(day(40)) ? [{ date: day(40), units: 1, sign: 'green', cropping: false }] : [],
    colonisedOn: past(day(50)) && !failed ? day(50) : null,
    weighings: weighings.filter((weighing) => past(weighing.date) && weighing.grams > 50),
    lost: null,
    closedOn: past(day(420)) ? day(420) : null,
    notWeighed: false,
  };
}
