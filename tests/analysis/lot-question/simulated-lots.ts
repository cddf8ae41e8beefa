import type { CountedBatch } from '@/lib/analysis/adjusted/contamination-request';
import { logistic } from '@/lib/stats/mixed/binomial/marginal-probability';
import { seededRandom } from '@/lib/stats/random/seeded-random';

export type SimulatedNetwork = {
  readonly seed: number;
  readonly lots: number;
  readonly batchesPerLot: number;
  /** Standard deviation of ordinary lots on the logit scale. */
  readonly lotDeviation: number;
  /** Logit added to the first lot; 0 for a network of good lots only. */
  readonly badLogit: number;
};

const methods = [
  { key: 'bath', logit: -2.5 },
  { key: 'lime', logit: -1.9 },
  { key: 'ferment', logit: -1.6 },
];

const same = {
  speciesId: 'oyster',
  materialId: 'straw',
  materialLot: 'straw 1',
  season: '2',
  inoculatedOn: '2026-03-02',
  assessedOn: '2026-04-13',
  bePercent: null,
};

/**
 * A network of 14 sites that each favour one method, whose lots go out one after another to a few sites at a time;
 * runs hold one to three batches of 8 to 30 units. Sites, runs and batches deviate by 0.35, 0.35 and 0.2.
 */
export function simulatedLots(network: SimulatedNetwork): CountedBatch[] {
  const random = seededRandom(network.seed);
  const sites = Array.from({ length: 14 }, (_, at) => ({
    id: `site ${at}`,
    favours: at % methods.length,
    logit: 0.35 * random.normal(),
  }));
  const batches: CountedBatch[] = [];
  for (let lot = 0; lot < network.lots; lot++) {
    const effect = network.lotDeviation * random.normal() + (lot === 0 ? network.badLogit : 0);
    const reached = random.shuffle(sites).slice(0, 5);
    let made = 0;
    while (made < network.batchesPerLot) {
      const site = reached[random.integer(reached.length)] ?? sites[0];
      const chosen = random.next() < 0.7 ? (site?.favours ?? 0) : random.integer(methods.length);
      const method = methods[chosen] ?? { key: 'bath', logit: -2.5 };
      const runEffect = 0.35 * random.normal();
      const together = Math.min(1 + random.integer(3), network.batchesPerLot - made);
      for (let k = 0; k < together; k++) {
        const units = 8 + random.integer(23);
        const logit = method.logit + (site?.logit ?? 0) + effect + runEffect + 0.2 * random.normal();
        batches.push({
          id: `batch ${String(batches.length).padStart(5, '0')}`,
          spawnLot: `lot ${String(lot).padStart(2, '0')}`,
          ...same,
          siteId: site?.id ?? '',
          methodKey: method.key,
          run: `run ${lot}-${made}`,
          units,
          contaminated: random.binomial(units, logistic(logit)),
        });
      }
      made += together;
    }
  }
  return batches;
}
