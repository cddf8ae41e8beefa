import { answerLots } from '@/lib/analysis/lot-question/answer-lots';
import { fitHere } from '../analysis/adjusted/story-data';
import { type SimulatedNetwork, simulatedLots } from '../analysis/lot-question/simulated-lots';
import type { LevelRow } from './calibration-row';
import { noisePercent } from './rejection-row';

type Setting = Omit<SimulatedNetwork, 'seed'>;

/** Networks of ordinary lots, and the same with one bad lot: how often is it called out, and how often another? */
const settings: readonly Setting[] = [
  { lots: 24, batchesPerLot: 28, lotDeviation: 0.25, badLogit: 0 },
  { lots: 24, batchesPerLot: 28, lotDeviation: 0, badLogit: 0 },
  { lots: 24, batchesPerLot: 28, lotDeviation: 0.25, badLogit: 2.1 },
  { lots: 24, batchesPerLot: 28, lotDeviation: 0.25, badLogit: 1 },
  { lots: 40, batchesPerLot: 10, lotDeviation: 0.25, badLogit: 2.1 },
];

export async function lotCalibration(replicates: number): Promise<LevelRow[]> {
  const rows: LevelRow[] = [];
  for (const setting of settings) {
    let [found, falseCalls, judged] = [0, 0, 0];
    for (let round = 0; round < replicates; round += 1) {
      const answer = await answerLots(simulatedLots({ ...setting, seed: 20_000 + round }), fitHere);
      if (answer.kind !== 'judged') continue;
      judged += 1;
      const called = answer.lots.filter(({ verdict }) => verdict === 'loses-more');
      const bad = setting.badLogit > 0 && called.some(({ lotId }) => lotId === 'lot 00');
      if (bad) found += 1;
      if (called.length > (bad ? 1 : 0)) falseCalls += 1;
    }
    const share = (count: number) => (100 * count) / Math.max(1, judged);
    const power = setting.badLogit === 0 ? '' : `, bad lot found in ${share(found).toFixed(1)} %`;
    rows.push({
      method: 'spawn lots against what their sites and methods would lose',
      setting: `${setting.lots} lots of ${setting.batchesPerLot} batches, lots deviate by ${setting.lotDeviation} on the logit, one lot by ${setting.badLogit}`,
      stated: 'a good lot called out in at most 5 % of networks',
      found: `${share(falseCalls).toFixed(1)} %${power}`,
      holds: share(falseCalls) <= 7 + noisePercent(5, judged),
    });
  }
  return rows;
}
