import { type Answer, cannotCompute } from '@/lib/growing/answer';
import { bedYieldKgPerSquareMetre } from '@/lib/growing/bed-yield';
import { daysBetween } from '@/lib/growing/calendar-date';
import { gramsPerLogPerYear } from '@/lib/growing/log-yield';
import type { ContainerKind } from '@/lib/growing/vocabulary';

export type YieldedBatch = {
  readonly containerKind: ContainerKind;
  readonly unitCount: number;
  readonly bedAreaCm2: number | null;
  readonly inoculatedOn: string;
  readonly closedOn: string | null;
  /** Null where nothing was weighed and nobody said that nothing was picked. */
  readonly freshGrams: number | null;
  readonly anyWeighed: boolean;
};

export type ContainerYield = {
  /** Beds: kg per square metre. Null for other containers. */
  readonly bedYield: Answer<number> | null;
  /** Logs: grams per log per year. Null for other containers. */
  readonly logYield: Answer<number> | null;
};

/** The yield that beds and logs have instead of biological efficiency, up to today or the day of closing. */
export function containerYield(batch: YieldedBatch, today: string): ContainerYield {
  const { containerKind, bedAreaCm2, freshGrams, closedOn } = batch;
  if (containerKind === 'bed') {
    const nothingYet = !batch.anyWeighed && closedOn === null;
    const squareMetres = bedAreaCm2 === null ? null : bedAreaCm2 / 10_000;
    return {
      bedYield: nothingYet
        ? cannotCompute('no-harvest-yet')
        : bedYieldKgPerSquareMetre(freshGrams, squareMetres),
      logYield: null,
    };
  }
  if (containerKind !== 'log') return { bedYield: null, logYield: null };
  const days = daysBetween(batch.inoculatedOn, closedOn ?? today);
  return { bedYield: null, logYield: gramsPerLogPerYear(freshGrams, batch.unitCount, days) };
}
