import { blockedMeansPower } from '@/lib/stats/planning/blocked-means-power';
import { designEffect } from '@/lib/stats/planning/design-effect';

/** What the size of a trial rests on; percentages and points run 0-100. */
export type TrialAssumptions = {
  readonly outcome: 'contamination' | 'yield';
  readonly arms: number;
  readonly sites: number;
  readonly unitsPerRun: number;
  /** Expected in the arm that the others are compared with. */
  readonly expectedPercent: number;
  /** The difference that is worth finding. */
  readonly differencePoints: number;
  /** Correlation of two units of one run at one site, 0-1; for contamination. */
  readonly likeness: number | null;
  /** Standard deviation of runs of one arm at one site, in points of BE; for yield. */
  readonly runSpreadPoints: number | null;
  readonly powerPercent: number;
};

export type TrialSize = {
  /** Standard deviation of the percentage of one run about its arm and site, in points. */
  readonly runSpreadPoints: number;
  /** By how much a run's units being alike multiplies the units needed; null for yield. */
  readonly designEffect: number | null;
  /** Two-sided level of each comparison with the first arm: 5 % shared among them. */
  readonly significance: number;
  /** Runs of each arm at each site that reach the power asked for; null where not even 50 do. */
  readonly blocksNeeded: number | null;
  /** Power in percent by runs of each arm at each site. */
  readonly powerOf: (blocks: number) => number;
};

const mostBlocks = 50;
const level = 0.05;

/** Contamination of one run: binomial, times the design effect of its units being alike; the mean of the two arms. */
function spreadOfRates(given: TrialAssumptions, effect: number): number {
  const rates = [given.expectedPercent, given.expectedPercent + given.differencePoints].map((p) => p / 100);
  const variance = rates.reduce((sum, p) => sum + p * (1 - p), 0) / rates.length;
  return 100 * Math.sqrt((variance * effect) / given.unitsPerRun);
}

/**
 * How many runs a trial takes. A run counts once, as the percentage of its units (or its biological efficiency), since
 * units of one run share its fate; arms are compared within sites by the t test of the planned analysis.
 */
export function trialSize(given: TrialAssumptions): TrialSize {
  const effect =
    given.outcome === 'contamination'
      ? designEffect({
          meanSize: given.unitsPerRun,
          intraClusterCorrelation: given.likeness ?? 0,
          sizeVariation: 0,
        })
      : null;
  const spread = effect === null ? (given.runSpreadPoints ?? 0) : spreadOfRates(given, effect);
  const significance = level / (given.arms - 1);
  const powerOf = (blocks: number) =>
    100 *
    blockedMeansPower({
      difference: given.differencePoints,
      standardDeviation: spread,
      perArm: blocks * given.sites,
      arms: given.arms,
      strata: given.sites,
      significance,
    });
  let needed: number | null = null;
  for (let blocks = 1; blocks <= mostBlocks && needed === null; blocks += 1)
    if (powerOf(blocks) >= given.powerPercent) needed = blocks;
  return {
    runSpreadPoints: spread,
    designEffect: effect,
    significance,
    blocksNeeded: needed,
    powerOf,
  };
}
