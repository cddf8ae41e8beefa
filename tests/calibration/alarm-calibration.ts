import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';
import { cusumLimit } from '@/lib/stats/watching/cusum-limit';
import { cusumPath } from '@/lib/stats/watching/cusum-path';
import { ewmaProportion } from '@/lib/stats/watching/ewma-proportion';
import { ewmaWidth } from '@/lib/stats/watching/ewma-width';
import type { LevelRow } from './calibration-row';
import { clusterRate } from './cluster-samples';

/** Batches between false alarms that the charts are set to. */
const TARGET = 200;
/** A chart still silent after this many batches is taken to alarm then; it is far beyond the target. */
const LONGEST = 4_000;

const SETTINGS = [0.02, 0.1, 0.3].flatMap((rate) =>
  [0, 0.1, 0.3].flatMap((correlation) => [12, 30].map((units) => ({ rate, correlation, units }))),
);

type Batch = { events: number; units: number };

/** Mean number of batches to the first alarm of a chart that is asked again with ever longer runs. */
function meanRunLength(
  random: SeededRandom,
  replicates: number,
  draw: (random: SeededRandom) => Batch,
  firstAlarm: (batches: Batch[]) => number | undefined,
): number {
  let total = 0;
  for (let round = 0; round < replicates; round += 1) {
    const batches: Batch[] = [];
    let alarm: number | undefined;
    let length = 250;
    while (alarm === undefined && length <= LONGEST) {
      while (batches.length < length) batches.push(draw(random));
      alarm = firstAlarm(batches);
      length *= 2;
    }
    total += (alarm ?? LONGEST) + 1;
  }
  return total / replicates;
}

/** Charts of an unchanged process: are false alarms as rare as stated? */
export function alarmCalibration(replicates: number): LevelRow[] {
  return SETTINGS.flatMap(({ rate, correlation, units }) => {
    const random = seededRandom(10_000 + Math.round(rate * 1000 + correlation * 100 + units));
    const draw = (source: SeededRandom) => ({
      events: source.binomial(units, clusterRate(source, rate, correlation)),
      units,
    });
    const shift = { inControlOdds: 1, alarmOdds: 2 };
    const limit = cusumLimit([{ units, probability: rate }], TARGET, {
      shift,
      intraBatchCorrelation: correlation,
      // Alike units need limits so high that a fine lattice would hold too many states.
      scale: correlation > 0.2 ? 10 : 20,
      rounding: 'shared',
      trueOdds: 1,
    });
    const width = ewmaWidth({ centre: rate, weight: 0.2, units, intraBatchCorrelation: correlation }, TARGET);
    const row = (method: string, stated: number, found: number): LevelRow => ({
      method,
      setting: `${units} units a batch, rate ${100 * rate} %, correlation ${correlation}`,
      stated: `${stated.toFixed(0)} batches between false alarms`,
      found: found.toFixed(0),
      holds: found >= 0.9 * stated,
    });
    const rows: LevelRow[] = [];
    if (limit.kind === 'limit') {
      const found = meanRunLength(random, replicates, draw, (batches) => {
        const steps = batches.map((batch) => ({ ...batch, probability: rate }));
        return cusumPath(steps, shift, { limit: limit.limit, reset: true }).signals[0];
      });
      rows.push(row('CUSUM for doubled odds', limit.runLength, found));
    }
    if (width.kind === 'limit') {
      const design = { centre: rate, weight: 0.2, width: width.width, intraBatchCorrelation: correlation };
      const found = meanRunLength(random, replicates, draw, (batches) => {
        const alarm = ewmaProportion(batches, design).points.findIndex(({ signal }) => signal);
        return alarm === -1 ? undefined : alarm;
      });
      rows.push(row('EWMA, weight 0.2', width.runLength, found));
    }
    return rows;
  });
}
