import { answerLosses } from '@/lib/analysis/loss-question/answer-losses';
import type { LossSource } from '@/lib/analysis/loss-question/losses-answer';
import { fitHere, storyData } from '../analysis/adjusted/story-data';
import { type SimulatedNetwork, simulatedLots } from '../analysis/lot-question/simulated-lots';
import type { LevelRow } from './calibration-row';
import { noisePercent } from './rejection-row';

type Setting = Omit<SimulatedNetwork, 'seed' | 'badLogit'>;

/** Few and many lots that differ ordinarily and a lot; sites and runs deviate by 0.35, batches by 0.2. */
const settings: readonly Setting[] = [
  { lots: 24, batchesPerLot: 20, lotDeviation: 0.25 },
  { lots: 24, batchesPerLot: 20, lotDeviation: 0.8 },
  { lots: 10, batchesPerLot: 12, lotDeviation: 0.5 },
];

const sources: readonly LossSource[] = ['site', 'spawn lot', 'run', 'rest'];

/** How often the 95 % limits of a source's share in the variation of contamination hold the true share. */
export async function shareCalibration(replicates: number): Promise<LevelRow[]> {
  const { raw } = storyData();
  const rows: LevelRow[] = [];
  for (const setting of settings) {
    const parts = { site: 0.35 ** 2, 'spawn lot': setting.lotDeviation ** 2, run: 0.35 ** 2, rest: 0.2 ** 2 };
    const total = Object.values(parts).reduce((sum, part) => sum + part, 0);
    const held = new Map(sources.map((source) => [source, 0]));
    let judged = 0;
    for (let round = 0; round < replicates; round += 1) {
      const batches = simulatedLots({ ...setting, badLogit: 0, seed: 40_000 + round });
      const levelledOut = { material: false, season: false };
      const { contamination } = await answerLosses(
        { batches, raw: raw.total, codes: new Map(), levelledOut },
        fitHere,
      );
      if (contamination.kind === 'cannot') continue;
      judged += 1;
      for (const one of contamination.sources) {
        if (one.kind === 'cannot' || !(one.source in parts)) continue;
        const truth = (100 * parts[one.source as keyof typeof parts]) / total;
        if (one.percent.low <= truth && truth <= one.percent.high)
          held.set(one.source, (held.get(one.source) ?? 0) + 1);
      }
    }
    for (const source of sources) {
      const share = (100 * (held.get(source) ?? 0)) / Math.max(1, judged);
      rows.push({
        method: 'share of a source in what batches differ by',
        setting: `${source}; ${setting.lots} lots of ${setting.batchesPerLot} batches, lots deviate by ${setting.lotDeviation} on the logit`,
        stated: 'the limits hold the true share in 95 %, with 14 sites at least in about 90 %',
        found: `${share.toFixed(1)} %`,
        holds: share >= 90 - noisePercent(5, judged),
      });
    }
  }
  return rows;
}
