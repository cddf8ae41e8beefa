import type { ModelBatch } from '@/lib/analysis/adjusted/model-batch';
import { logistic } from '@/lib/stats/mixed/binomial/marginal-probability';
import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';

export type SimulatedPlan = {
  readonly seed: number;
  readonly sites: number;
  readonly batchesPerSite: number;
  /** Each site uses so many of the four methods; tidy sites favour the methods that lose more, as in the demo. */
  readonly methodsPerSite: number;
  /** All batches of a site come from one spawn lot that no other site has: sites and lots split the batches alike. */
  readonly lotPerSite?: boolean;
};

export type SimulatedTruth = {
  readonly batches: readonly ModelBatch[];
  readonly sites: readonly string[];
  readonly methods: readonly string[];
  /** Whether the site has used the method. */
  readonly used: (site: string, method: string) => boolean;
  /** One more batch there, from a new run and a new spawn lot. */
  readonly nextBatch: (
    site: string,
    method: string,
  ) => { readonly contaminated: number; readonly bePercent: number };
  /** What the site would get of the method over many batches: biological efficiency, percent, total losses as 0. */
  readonly expectedBe: (site: string, method: string) => number;
};

export const nextUnits = 20;

const logits = [-2.6, -2.0, -1.7, -2.3];
const yields = [82, 78, 72, 84];
const deviations = { site: 0.4, cell: 0.25, lot: 0.3, run: 0.35, batch: 0.2 } as const;
const beDeviations = { site: 7, cell: 4, lot: 4, run: 6, batch: 14 } as const;

/** A network whose truth is known, with sites, methods at sites, spawn lots, runs and batches that differ by chance. */
export function simulatedNext({
  seed,
  sites,
  batchesPerSite,
  methodsPerSite,
  lotPerSite = false,
}: SimulatedPlan): SimulatedTruth {
  const random = seededRandom(seed);
  const methods = logits.map((_, at) => `method ${at}`);
  const names = Array.from({ length: sites }, (_, at) => `site ${String(at).padStart(2, '0')}`);
  const draw = <T extends string>(keys: readonly T[]) =>
    new Map(keys.map((key) => [key, [random.normal(), random.normal()] as const]));
  const siteLuck = draw(names);
  const cells = names.flatMap((site) => methods.map((method) => `${site} ${method}`));
  const cellLuck = draw(cells);
  const lots = lotPerSite
    ? names.map((site) => `lot of ${site}`)
    : Array.from({ length: Math.max(6, Math.round((sites * batchesPerSite) / 20)) }, (_, at) => `lot ${at}`);
  const lotLuck = draw(lots);
  const own = new Map(names.map((site) => [site, random.shuffle(methods).slice(0, methodsPerSite)]));
  const at = (map: ReadonlyMap<string, readonly [number, number]>, key: string, of: 0 | 1) =>
    map.get(key)?.[of] ?? 0;
  const logitOf = (site: string, method: string) => {
    const tidy = (own.get(site)?.[0] ?? '') > 'method 1' ? -0.75 : 0;
    return (
      (logits[methods.indexOf(method)] ?? 0) +
      tidy +
      deviations.site * at(siteLuck, site, 0) +
      deviations.cell * at(cellLuck, `${site} ${method}`, 0)
    );
  };
  const beOf = (site: string, method: string) =>
    (yields[methods.indexOf(method)] ?? 0) +
    beDeviations.site * at(siteLuck, site, 1) +
    beDeviations.cell * at(cellLuck, `${site} ${method}`, 1);
  const grow = (
    draws: SeededRandom,
    site: string,
    method: string,
    units: number,
    lot: readonly [number, number],
  ) => {
    const run = [draws.normal(), draws.normal()] as const;
    const logit =
      logitOf(site, method) +
      deviations.lot * lot[0] +
      deviations.run * run[0] +
      deviations.batch * draws.normal();
    const contaminated = draws.binomial(units, logistic(logit));
    const full =
      beOf(site, method) +
      beDeviations.lot * lot[1] +
      beDeviations.run * run[1] +
      beDeviations.batch * draws.normal();
    return { contaminated, bePercent: (Math.max(0, full) * (units - contaminated)) / units };
  };
  const batches: ModelBatch[] = [];
  for (const [index, site] of names.entries()) {
    for (let made = 0; made < batchesPerSite; made += 1) {
      const choices = own.get(site) ?? [];
      const method =
        random.next() < 0.6 ? (choices[0] ?? '') : (choices[random.integer(choices.length)] ?? '');
      const drawn = lots[random.integer(lots.length)] ?? '';
      const lot = lotPerSite ? (lots[index] ?? '') : drawn;
      const units = 8 + random.integer(23);
      const luck = [at(lotLuck, lot, 0), at(lotLuck, lot, 1)] as const;
      const id = `batch ${String(batches.length).padStart(5, '0')}`;
      batches.push({
        id,
        siteId: site,
        methodKey: method,
        speciesId: 'oyster',
        materialId: 'straw',
        season: '2',
        inoculatedOn: '2026-03-02',
        assessedOn: '2026-04-13',
        spawnLot: lot,
        materialLot: 'straw 1',
        run: `run ${index}-${made}`,
        units,
        ...grow(random, site, method, units, luck),
      });
    }
  }
  const fresh = seededRandom(seed + 777_000);
  const next = (site: string, method: string) =>
    grow(fresh, site, method, nextUnits, [fresh.normal(), fresh.normal()]);
  return {
    batches,
    sites: names,
    methods,
    used: (site, method) => batches.some((one) => one.siteId === site && one.methodKey === method),
    nextBatch: next,
    expectedBe: (site, method) => {
      let sum = 0;
      for (let round = 0; round < 200; round += 1) sum += next(site, method).bePercent;
      return sum / 200;
    },
  };
}
