import { addDays } from '@/lib/growing/calendar-date';
import { spawnLotCode, spawnLotPlan, spawnMakers } from '../story/spawn-lots';
import { truths } from '../story/truths';
import { pickOne } from './pick';
import type { StoryStreams } from './story-stream';

export type PlannedSpawnLot = {
  readonly code: string;
  readonly speciesCode: string;
  readonly madeOn: string;
  readonly maker: string;
  /** The lot before it, from which it was made; null for the first, made from the culture. */
  readonly parentCode: string | null;
  readonly logit: number;
};

/** Forty lots spread over the story, each species' lots one after another. */
export function planSpawnLots(streams: StoryStreams, start: string, days: number): PlannedSpawnLot[] {
  return spawnLotPlan.flatMap(({ speciesCode, name, count }) =>
    Array.from({ length: count }, (_, index): PlannedSpawnLot => {
      const code = spawnLotCode(name, index + 1);
      const random = streams('lot', code);
      const bad = code === truths.badLot.code ? truths.badLot.logit : 0;
      return {
        code,
        speciesCode,
        madeOn: addDays(start, Math.round((index * days) / count) - 20),
        maker: pickOne(random, spawnMakers),
        parentCode: index % 3 === 0 ? null : spawnLotCode(name, index),
        logit: random.normal() * truths.lotDeviation + bad,
      };
    }),
  );
}

/** The lot in use on a day: the latest made at least a week before. */
export function lotInUse(
  lots: readonly PlannedSpawnLot[],
  speciesCode: string,
  date: string,
): PlannedSpawnLot {
  const own = lots.filter((lot) => lot.speciesCode === speciesCode);
  const made = own.filter((lot) => addDays(lot.madeOn, 7) <= date);
  const lot = made.at(-1) ?? own[0];
  if (lot === undefined) throw new Error(`no spawn lot of ${speciesCode}`);
  return lot;
}
