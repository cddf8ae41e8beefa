import { judgeOrigins } from '@/lib/analysis/lot-question/judge-origins';
import type { OriginKind } from '@/lib/analysis/lot-question/judged-origin';
import { materialLots, materialSources, spawnMakers } from '@/lib/analysis/lot-question/origin-kinds';
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
  readonly kindOf: (network: OriginNetwork) => OriginKind;
  readonly badOf: (network: OriginNetwork) => string;
  /** What is added to the logit of the bad one. */
  readonly bad: (logit: number) => Pick<SimulatedOrigins, 'badMaker' | 'badSource' | 'badMaterial'>;
  readonly logits: readonly number[];
};

const studies: readonly Study[] = [
  {
    name: 'material lots',
    kindOf: () => materialLots,
    badOf: ({ bad }) => bad.materialLot,
    bad: (badMaterial) => ({ badMaterial }),
    logits: [0, 2.1],
  },
  {
    name: 'makers of spawn',
    kindOf: ({ makers }) => spawnMakers(new Map(Object.entries(makers.spawn))),
    badOf: ({ bad }) => bad.maker,
    bad: (badMaker) => ({ badMaker }),
    logits: [0, 0.7, 1.3],
  },
  {
    name: 'sources of material',
    kindOf: ({ makers }) => materialSources(new Map(Object.entries(makers.material))),
    badOf: ({ bad }) => bad.source,
    bad: (badSource) => ({ badSource }),
    logits: [0, 1.3],
  },
];

const size = { makers: 4, lotsPerMaker: 6, batchesPerLot: 14 };

/** How often a good material lot, maker or source is called out, and how often a bad one is found. */
export async function originCalibration(replicates: number): Promise<LevelRow[]> {
  const rows: LevelRow[] = [];
  for (const { name, kindOf, badOf, bad, logits } of studies)
    for (const logit of logits) {
      let [found, falseCalls, judged] = [0, 0, 0];
      for (let round = 0; round < replicates; round += 1) {
        const network = simulatedOrigins({ ...size, ...bad(logit), seed: 60_000 + round });
        const answer = await judgeOrigins(network.batches, kindOf(network), fitHere);
        if (answer.kind !== 'judged') continue;
        judged += 1;
        const called = answer.origins.filter(({ verdict }) => verdict === 'loses-more');
        const hit = logit > 0 && called.some(({ origin }) => origin === badOf(network));
        if (hit) found += 1;
        if (called.length > (hit ? 1 : 0)) falseCalls += 1;
      }
      const share = (count: number) => (100 * count) / Math.max(1, judged);
      const power = logit === 0 ? '' : `, the bad one found in ${share(found).toFixed(1)} %`;
      rows.push({
        method: `${name} against what their sites and methods would lose`,
        setting: `${size.makers} makers of ${size.lotsPerMaker} lots of ${size.batchesPerLot} batches, 4 sources; lots of spawn deviate by 0.25, of material by 0.2 on the logit, one of these by ${logit}`,
        stated: 'a good one called out in at most 5 % of networks',
        found: `${share(falseCalls).toFixed(1)} %${power}`,
        holds: share(falseCalls) <= 7 + noisePercent(5, judged),
      });
    }
  return rows;
}
