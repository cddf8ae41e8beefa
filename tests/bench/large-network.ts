import { seededRandom } from '../../lib/stats/random/seeded-random';

/** Columns of a simulated network, one entry per batch. */
export type LargeNetwork = {
  readonly site: string[];
  readonly method: string[];
  readonly lot: string[];
  readonly run: string[];
  readonly siteMethod: string[];
  readonly batch: string[];
  readonly contaminated: number[];
  readonly units: number[];
  readonly logBe: number[];
};

export type NetworkSize = {
  readonly batches: number;
  readonly sites: number;
  readonly lots: number;
  readonly runs: number;
};

/** Share of treatment runs whose batches take spawn from two lots. */
const MIXED_RUNS = 0;
const METHOD_LOGIT = [-2.7, -2.3, -2.0, -1.7, -1.3, -0.9];
const METHOD_LOG_BE = [-0.48, -0.36, -0.42, -0.25, -0.16, -0.3];

/**
 * A network for timing: every treatment run is one method on one day at one site and fills several batches; spawn lots last a
 * few weeks and go to all sites, a run using one lot, or two in one of five runs. True standard deviations on the logit:
 * site 0.6, lot 0.4, site x method 0.3, run 0.4, batch 0.5.
 */
export function simulateLargeNetwork(size: NetworkSize, seed: number): LargeNetwork {
  const random = seededRandom(seed);
  const normals = (count: number, deviation: number) =>
    Array.from({ length: count }, () => deviation * random.normal());
  const at = (values: readonly number[], index: number) => values[index] ?? 0;
  const siteEffect = normals(size.sites, 0.6);
  const lotEffect = normals(size.lots, 0.4);
  const cellEffect = normals(size.sites * METHOD_LOGIT.length, 0.3);
  const yieldOfSite = normals(size.sites, 0.18);
  const yieldOfLot = normals(size.lots, 0.08);
  const weights = Array.from({ length: size.sites }, () => 0.2 + random.gamma(2));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let reached = 0;
  const cumulative = weights.map((weight) => {
    reached += weight / total;
    return reached;
  });
  const runs = Array.from({ length: size.runs }, () => {
    const draw = random.next();
    const site = Math.min(cumulative.findIndex((share) => draw < share) >>> 0, size.sites - 1);
    const method = random.integer(METHOD_LOGIT.length);
    const day = random.next();
    const lot = () =>
      Math.min(Math.max(Math.round((day + 0.02 * random.normal()) * size.lots), 0), size.lots - 1);
    const first = lot();
    const second = random.next() < MIXED_RUNS ? lot() : first;
    const logit =
      at(METHOD_LOGIT, method) + at(siteEffect, site) + at(cellEffect, site * METHOD_LOGIT.length + method);
    return {
      site,
      method,
      lots: [first, second] as const,
      logit: logit + 0.4 * random.normal(),
      yield: 0.1 * random.normal(),
    };
  });
  const network: LargeNetwork = {
    site: [],
    method: [],
    lot: [],
    run: [],
    siteMethod: [],
    batch: [],
    contaminated: [],
    units: [],
    logBe: [],
  };
  for (let batch = 0; batch < size.batches; batch++) {
    // Every run gets a batch first, the rest fall where they fall.
    const number = batch < size.runs ? batch : random.integer(size.runs);
    const run = runs[number];
    if (!run) continue;
    const lot = run.lots[random.integer(2)] ?? run.lots[0];
    const units = 6 + random.integer(20);
    const logit = run.logit + at(lotEffect, lot) + 0.5 * random.normal();
    network.site.push(`S${run.site}`);
    network.method.push(String.fromCharCode(65 + run.method));
    network.lot.push(`L${lot}`);
    network.run.push(`R${number}`);
    network.siteMethod.push(`S${run.site}:${run.method}`);
    network.batch.push(`B${batch}`);
    network.units.push(units);
    network.contaminated.push(random.binomial(units, 1 / (1 + Math.exp(-logit))));
    network.logBe.push(
      at(METHOD_LOG_BE, run.method) +
        at(yieldOfSite, run.site) +
        at(yieldOfLot, lot) +
        run.yield +
        0.25 * random.normal(),
    );
  }
  return network;
}
