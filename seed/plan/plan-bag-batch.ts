import { assessmentWindowDefaults } from '@/lib/growing/assessment-window-defaults';
import { addDays } from '@/lib/growing/calendar-date';
import { speciesDefaults } from '@/lib/growing/species-defaults';
import type { MethodKind } from '@/lib/growing/vocabulary';
import type { SeededRandom } from '@/lib/stats/random/seeded-random';
import type { StoryCrop } from '../story/crops';
import type { StorySite } from '../story/sites';
import { truths } from '../story/truths';
import { between, pickWeighted } from './pick';
import { planOutcome } from './plan-outcome';
import { planRun } from './plan-run';
import { lotInUse, type PlannedSpawnLot } from './plan-spawn-lots';
import type { PlannedBatch, PlannedRun } from './story-plan';
import type { StoryStreams } from './story-stream';

export type PlanState = {
  readonly streams: StoryStreams;
  readonly today: string;
  readonly start: string;
  readonly lots: readonly PlannedSpawnLot[];
  readonly runs: PlannedRun[];
};

function seasonLogit(state: PlanState, date: string): number {
  const season = Math.floor((Date.parse(date) - Date.parse(state.start)) / (365 * 86_400_000));
  const month = Number(date.slice(5, 7));
  const wet =
    season === truths.wetSeason.season && (truths.wetSeason.months as readonly number[]).includes(month);
  return wet ? truths.wetSeason.logit : 0;
}

/** A method that the site uses and the species bears: lime only for oysters and the like. */
function methodOf(random: SeededRandom, site: StorySite, speciesCode: string): MethodKind {
  const limeTolerant = speciesDefaults.find((species) => species.code === speciesCode)?.limeTolerant ?? false;
  const choices = (Object.entries(site.methods) as [MethodKind, number][]).map(([method, weight]) => ({
    method,
    weight,
  }));
  const borne = choices.filter(({ method }) => limeTolerant || method !== 'cold_lime_soak');
  if (borne.length === 0) return 'steam';
  return pickWeighted(random, borne, ({ weight }) => weight).method;
}

export function planBagBatch(
  state: PlanState,
  site: StorySite,
  siteLogit: number,
  date: string,
  together: number,
  crops: readonly StoryCrop[],
): PlannedBatch[] {
  const key = `${site.code}-${state.runs.length + 1}`;
  const random = state.streams('run', key);
  const crop = pickWeighted(random, crops, ({ weight }) => weight);
  const method = methodOf(random, site, crop.speciesCode);
  const days = method === 'cold_ferment' ? 14 : 1;
  const run = planRun(random, {
    siteCode: site.code,
    method,
    date: addDays(date, -days),
    key,
  });
  state.runs.push(run);
  return Array.from({ length: together }, (_, index) =>
    planOne(state, state.streams('batch', key, index), siteLogit, date, crop, run),
  );
}

function planOne(
  state: PlanState,
  random: SeededRandom,
  siteLogit: number,
  inoculatedOn: string,
  crop: StoryCrop,
  run: PlannedRun,
): PlannedBatch {
  const unitCount = between(random, crop.unitsFrom, crop.unitsTo);
  const lot = lotInUse(state.lots, crop.speciesCode, inoculatedOn);
  const window = assessmentWindowDefaults.find(
    (one) => one.speciesCode === crop.speciesCode && one.container === crop.container,
  );
  const chance = random.next();
  const moistureSource =
    chance < truths.missingMoisture
      ? 'none'
      : chance < truths.missingMoisture + truths.assumedMoisture
        ? 'assumed'
        : 'measured';
  const moisture = Math.round(10 * (crop.moisturePercent + 1.5 * random.normal())) / 10;
  const outcome = planOutcome(random, {
    inoculatedOn,
    today: state.today,
    unitCount,
    logit:
      truths.baseLogit +
      truths.methodLogit[run.method] +
      siteLogit +
      lot.logit +
      run.logit +
      seasonLogit(state, inoculatedOn),
    dryGramsPerUnit: (crop.wetGrams * (100 - moisture)) / 100,
    bePercent: crop.bePercent * truths.methodYield[run.method],
    firstHarvestDays: crop.firstHarvestDays,
    flushDays: crop.flushDays,
    flushes: crop.flushes,
    windowDays: window?.contaminationDays ?? 28,
  });
  return {
    siteCode: run.siteCode,
    speciesCode: crop.speciesCode,
    container: crop.container,
    materialCode: crop.materialCode,
    method: run.method,
    runKey: run.key,
    spawnLotCode: lot.code,
    inoculatedOn,
    unitCount,
    wetGrams: unitCount * crop.wetGrams,
    spawnGrams: Math.round(unitCount * crop.wetGrams * 0.05),
    moistureSource,
    moisturePercent: moistureSource === 'measured' ? moisture : null,
    bedAreaCm2: null,
    ...outcome,
  };
}
