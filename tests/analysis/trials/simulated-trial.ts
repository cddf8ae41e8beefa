import type { TrialData, TrialRun } from '@/lib/analysis/trials/trial-run';
import { drawAllocation } from '@/lib/records/trial/draw-allocation';
import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';

export type Simulated = {
  readonly sites: number;
  readonly blocks: number;
  readonly unitsPerRun: number;
  /** True rate of each arm at a middling site, 0-1. */
  readonly rates: readonly number[];
  /** Correlation of units of one run. */
  readonly likeness: number;
  /** Standard deviation of sites on the logit scale. */
  readonly siteSpread: number;
};

const logistic = (x: number) => 1 / (1 + Math.exp(-x));

function rateOfRun(mean: number, likeness: number, random: SeededRandom): number {
  if (likeness === 0) return mean;
  const size = 1 / likeness - 1;
  return random.beta(mean * size, (1 - mean) * size);
}

/** One trial as it might have gone: the list drawn as the product draws it, runs beta-binomial about their site and arm. */
export function simulateTrial(seed: number, of: Simulated): TrialData {
  const random = seededRandom(seed);
  const sites = Array.from({ length: of.sites }, (_, index) => ({ id: `s${index}`, code: `S${index}` }));
  const shift = new Map(sites.map(({ id }) => [id, of.siteSpread * random.normal()]));
  const runs = drawAllocation(String(seed), sites, of.rates.length, of.blocks).map((slot): TrialRun => {
    const rate = of.rates[slot.arm - 1] ?? 0;
    const mean = logistic(Math.log(rate / (1 - rate)) + (shift.get(slot.siteId) ?? 0));
    const found = random.binomial(of.unitsPerRun, rateOfRun(mean, of.likeness, random));
    const slotId = `${slot.siteId}-${String(slot.place).padStart(3, '0')}`;
    return {
      slotId,
      siteId: slot.siteId,
      armId: `arm${slot.arm}`,
      made: true,
      load: slotId,
      units: of.unitsPerRun,
      outcome: { kind: 'counted', numerator: found, denominator: of.unitsPerRun },
      departures: [],
    };
  });
  return {
    outcome: 'contamination',
    arms: of.rates.map((_, index) => ({ id: `arm${index + 1}`, label: `Arm ${index + 1}` })),
    runs,
  };
}
