import type { MethodKind } from '@/lib/growing/vocabulary';
import type { SeededRandom } from '@/lib/stats/random/seeded-random';
import { truths } from '../story/truths';
import { between } from './pick';
import type { PlannedReading, PlannedRun } from './story-plan';

type Where = {
  readonly siteCode: string;
  readonly method: MethodKind;
  readonly date: string;
  readonly key: string;
};

/** Rainwater in a tank: coldest late in January at 5 degrees Celsius, warmest late in July at 21. */
function waterCelsius(date: string): number {
  const day = (Date.parse(date) - Date.parse(`${date.slice(0, 4)}-01-25`)) / 86_400_000;
  return Math.round(10 * (13 - 8 * Math.cos((2 * Math.PI * day) / 365))) / 10;
}

/** One treatment run with its readings. The site with the short bath takes the load off early, every time. */
export function planRun(random: SeededRandom, where: Where): PlannedRun {
  const short = where.siteCode === truths.shortBath.site && where.method === 'hot_water_bath';
  const logit = random.normal() * truths.runDeviation + (short ? truths.shortBath.logit : 0);
  const made = (minutes: number, readings: readonly PlannedReading[]): PlannedRun => ({
    ...where,
    minutes,
    readings,
    logit,
  });
  const water = waterCelsius(where.date);
  switch (where.method) {
    case 'hot_water_bath':
    case 'steam': {
      const top = where.method === 'steam' ? 94 : 72;
      const hold = short ? truths.shortBath.minutes : between(random, 75, 105);
      const warmUp = 40;
      const readings = [
        0,
        20,
        warmUp,
        warmUp + Math.round(hold / 3),
        warmUp + Math.round((2 * hold) / 3),
        warmUp + hold,
      ].map((minutes) => ({
        minutes,
        celsius:
          Math.round(
            10 * (minutes >= warmUp ? top + random.normal() : water + ((top - water) * minutes) / warmUp),
          ) / 10,
        ph: null,
      }));
      return made(warmUp + hold + 2, readings);
    }
    case 'cold_lime_soak': {
      const hours = between(random, 7, 11);
      const ph = Math.round(100 * (12.4 + 0.05 * random.normal())) / 100;
      return made(hours * 60, [
        { minutes: 10, celsius: water, ph },
        { minutes: hours * 60 - 10, celsius: water + 1, ph: Math.round(100 * (ph - 0.05)) / 100 },
      ]);
    }
    case 'cold_ferment': {
      const days = between(random, 6, 13);
      return made(days * 1440, [{ minutes: 1440, celsius: between(random, 12, 20), ph: null }]);
    }
    case 'untreated':
      return made(0, []);
  }
}
