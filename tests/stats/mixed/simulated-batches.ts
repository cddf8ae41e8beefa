import { seededRandom } from '../../../lib/stats/random/seeded-random';

export type SimulatedBatch = {
  readonly site: string;
  readonly lot: string;
  readonly method: string;
  readonly moisture: number;
  readonly be: number;
  readonly contaminated: number;
  readonly units: number;
};

/** Batches with site, lot and method effects of known size, for property tests. */
export function simulatedBatches(seed: number, count: number, sites = 6, lots = 8): SimulatedBatch[] {
  const random = seededRandom(seed);
  const siteEffect = Array.from({ length: sites }, () => random.normal());
  const lotEffect = Array.from({ length: lots }, () => random.normal());
  return Array.from({ length: count }, (_, index) => {
    // Every method meets data, however few batches there are.
    const method = index < 3 ? index : random.integer(3);
    const site = index < sites ? index : random.integer(sites);
    const lot = random.integer(lots);
    const moisture = 60 + 3 * random.normal();
    const units = 4 + random.integer(12);
    const shared = 0.7 * (siteEffect[site] ?? 0) + 0.4 * (lotEffect[lot] ?? 0) + 0.4 * method;
    return {
      site: `S${site}`,
      lot: `L${lot}`,
      method: ['A', 'B', 'C'][method] ?? 'A',
      moisture,
      be: 70 + 8 * shared + 0.5 * (moisture - 60) + 6 * random.normal(),
      contaminated: random.binomial(units, 1 / (1 + Math.exp(1.2 - shared))),
      units,
    };
  });
}

/** Fixed method and moisture, random site and lot. */
export function termsOf(batches: readonly SimulatedBatch[], rename = (label: string) => label) {
  return {
    fixed: [
      { kind: 'factor' as const, name: 'method', values: batches.map(({ method }) => method) },
      { kind: 'covariate' as const, name: 'moisture', values: batches.map(({ moisture }) => moisture) },
    ],
    random: [
      { name: 'site', values: batches.map(({ site }) => rename(site)) },
      { name: 'lot', values: batches.map(({ lot }) => lot) },
    ],
  };
}

/** Estimates by name, as numbers. */
export function estimatesOf(fit: {
  readonly coefficients: readonly { readonly name: string; readonly estimate: unknown }[];
}) {
  return fit.coefficients.map(({ estimate }) => Number(estimate));
}
