import { answerOrigins, type OriginQuestion } from '@/lib/analysis/lot-question/answer-origins';
import { fitHere } from '../analysis/adjusted/story-data';
import {
  type OriginNetwork,
  type SimulatedOrigins,
  simulatedOrigins,
} from '../analysis/lot-question/simulated-origins';
import type { LevelRow } from './calibration-row';
import { noisePercent } from './rejection-row';

type Study = {
  readonly name: string;
  readonly of: OriginQuestion;
  /** The origin that should be found; none where what is bad is of another kind. */
  readonly badOf?: (network: OriginNetwork) => string;
  /** What is bad, for the row. */
  readonly one: string;
  /** What is added to the logit of the bad one. */
  readonly bad: (logit: number) => Partial<SimulatedOrigins>;
  readonly logits: readonly number[];
};

const studies: readonly Study[] = [
  {
    name: 'material lots',
    of: 'materialLots',
    badOf: ({ bad }) => bad.materialLot,
    one: 'one of these',
    bad: (badMaterial) => ({ badMaterial }),
    logits: [0, 2.1],
  },
  {
    name: 'makers of spawn',
    of: 'spawnMakers',
    badOf: ({ bad }) => bad.maker,
    one: 'one of these',
    bad: (badMaker) => ({ badMaker }),
    logits: [0, 0.7, 1.3],
  },
  {
    name: 'makers of spawn',
    of: 'spawnMakers',
    one: 'one lot of spawn',
    bad: (badSpawn) => ({ badSpawn }),
    logits: [2.1],
  },
  {
    name: 'sources of material',
    of: 'materialSources',
    badOf: ({ bad }) => bad.source,
    one: 'one of these',
    bad: (badSource) => ({ badSource }),
    logits: [0, 1.3],
  },
];

const size = { makers: 4, lotsPerMaker: 6, batchesPerLot: 14 };

/** How often a good material lot, maker or source is called out, and how often a bad one is found. */
export async function originCalibration(replicates: number): Promise<LevelRow[]> {
  const rows: LevelRow[] = [];
  for (const { name, of, badOf, one, bad, logits } of studies)
    for (const logit of logits) {
      let [found, falseCalls, judged] = [0, 0, 0];
      for (let round = 0; round < replicates; round += 1) {
        const network = simulatedOrigins({ ...size, ...bad(logit), seed: 60_000 + round });
        const { answers } = await answerOrigins(network.batches, network.makers, fitHere);
        const answer = answers[of];
        if (answer.kind !== 'judged') continue;
        judged += 1;
        const called = answer.origins.filter(({ verdict }) => verdict === 'loses-more');
        const badOne = logit > 0 ? badOf?.(network) : undefined;
        const hit = called.some(({ origin }) => origin === badOne);
        if (hit) found += 1;
        if (called.length > (hit ? 1 : 0)) falseCalls += 1;
      }
      const share = (count: number) => (100 * count) / Math.max(1, judged);
      const sought = logit > 0 && badOf !== undefined;
      const power = sought ? `, the bad one found in ${share(found).toFixed(1)} %` : '';
      rows.push({
        method: `${name} against what their sites and methods would lose`,
        setting: `${size.makers} makers of ${size.lotsPerMaker} lots of ${size.batchesPerLot} batches, 4 sources; lots of spawn deviate by 0.25, of material by 0.2 on the logit, ${one} by ${logit}`,
        stated: 'a good one called out in at most 5 % of networks',
        found: `${share(falseCalls).toFixed(1)} %${power}`,
        holds: share(falseCalls) <= 7 + noisePercent(5, judged),
      });
    }
  return rows;
}
