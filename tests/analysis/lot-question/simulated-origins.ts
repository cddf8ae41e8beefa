import type { CountedBatch } from '@/lib/analysis/adjusted/contamination-request';
import type { LotMakers } from '@/lib/analysis/lot-question/answer-origins';
import { logistic } from '@/lib/stats/mixed/binomial/marginal-probability';
import { seededRandom } from '@/lib/stats/random/seeded-random';

export type SimulatedOrigins = {
  readonly seed: number;
  readonly makers: number;
  readonly lotsPerMaker: number;
  readonly batchesPerLot: number;
  /** Logits added to all lots of the first maker, all of the first source, and the first material lot of the second source. */
  readonly badMaker?: number;
  readonly badSource?: number;
  readonly badMaterial?: number;
  /** Added to the first lot of spawn, which then goes onto one load of material only. */
  readonly badSpawn?: number;
};

export type OriginNetwork = {
  readonly batches: readonly CountedBatch[];
  readonly makers: LotMakers;
  /** The bad ones, by the name the answers give them. */
  readonly bad: { readonly maker: string; readonly source: string; readonly materialLot: string };
};

const methods = [
  { key: 'bath', logit: -2.5 },
  { key: 'lime', logit: -1.9 },
  { key: 'ferment', logit: -1.6 },
];
const sources = 4;
/** Sites take a new lot of material after so many lots of spawn. */
const spawnLotsPerMaterial = 5;

/**
 * A network of 12 sites that each favour one method and one source of material. Lots of spawn come from the makers in turn and
 * go out to five sites each; sites deviate by 0.35, spawn lots by 0.25, material lots by 0.2, runs by 0.35, batches by 0.2.
 */
export function simulatedOrigins(network: SimulatedOrigins): OriginNetwork {
  const random = seededRandom(network.seed);
  const sites = Array.from({ length: 12 }, (_, at) => ({
    id: `site ${at}`,
    favours: at % methods.length,
    source: at % sources,
    logit: 0.35 * random.normal(),
  }));
  const spawn: Record<string, string> = {};
  const material: Record<string, string> = {};
  const straw = new Map<string, number>();
  const strawOf = (source: number, period: number) => {
    const name = `straw ${source}-${period}`;
    material[name] = `source ${source}`;
    const bad =
      (source === 0 ? (network.badSource ?? 0) : 0) +
      (source === 1 && period === 0 ? (network.badMaterial ?? 0) : 0);
    const effect = straw.get(name) ?? 0.2 * random.normal() + bad;
    straw.set(name, effect);
    return { name, effect };
  };
  const batches: CountedBatch[] = [];
  for (let lot = 0; lot < network.makers * network.lotsPerMaker; lot += 1) {
    const maker = lot % network.makers;
    const spawnLot = `lot ${String(lot).padStart(2, '0')}`;
    spawn[spawnLot] = `maker ${maker}`;
    const bad = (maker === 0 ? (network.badMaker ?? 0) : 0) + (lot === 0 ? (network.badSpawn ?? 0) : 0);
    const effect = 0.25 * random.normal() + bad;
    const reached = random.shuffle(sites).slice(0, 5);
    for (let made = 0; made < network.batchesPerLot; ) {
      const site = reached[random.integer(reached.length)] ?? sites[0];
      const chosen = random.next() < 0.7 ? (site?.favours ?? 0) : random.integer(methods.length);
      const method = methods[chosen] ?? { key: 'bath', logit: -2.5 };
      const source = random.next() < 0.6 ? (site?.source ?? 0) : random.integer(sources);
      const onOne = lot === 0 && network.badSpawn !== undefined;
      const from = strawOf(onOne ? 0 : source, Math.floor(lot / spawnLotsPerMaterial));
      const run = 0.35 * random.normal();
      const together = Math.min(1 + random.integer(3), network.batchesPerLot - made);
      for (let k = 0; k < together; k += 1) {
        const units = 8 + random.integer(23);
        const logit = method.logit + (site?.logit ?? 0) + effect + from.effect + run + 0.2 * random.normal();
        batches.push({
          ...{ id: `batch ${String(batches.length).padStart(5, '0')}`, spawnLot, materialLot: from.name },
          ...{ speciesId: 'oyster', materialId: 'straw', season: '2', bePercent: null },
          ...{ inoculatedOn: '2026-03-02', assessedOn: '2026-04-13' },
          ...{ siteId: site?.id ?? '', methodKey: method.key, run: `run ${lot}-${made}`, units },
          contaminated: random.binomial(units, logistic(logit)),
        });
      }
      made += together;
    }
  }
  return {
    batches,
    makers: { spawn, material },
    bad: { maker: 'maker 0', source: 'source 0', materialLot: 'straw 1-0' },
  };
}
