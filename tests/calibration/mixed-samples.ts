import type { SeededRandom } from '@/lib/stats/random/seeded-random';

/** Standard deviations between sites, spawn lots and batches, in the units the model is linear in. */
export type MixedSetting = {
  readonly sites: number;
  readonly batchesPerSite: number;
  readonly siteDeviation: number;
  readonly lotDeviation: number;
  readonly batchDeviation: number;
};

export type MixedSample = {
  readonly site: string[];
  readonly lot: string[];
  readonly method: string[];
  /** True linear predictor of each batch, batch deviation included, about a mean of 0. */
  readonly linear: number[];
  /** True effect of each site. */
  readonly siteEffect: ReadonlyMap<string, number>;
};

/** Effects of the three methods. */
export const EFFECTS: Readonly<Record<string, number>> = { A: 0, B: 0.5, C: -0.3 };
const METHODS = Object.keys(EFFECTS);
const LOTS = 10;

/** Sites of unequal size, each with a favourite among the methods, batches of shared spawn lots. */
export function mixedSample(random: SeededRandom, setting: MixedSetting): MixedSample {
  const sample = {
    site: [] as string[],
    lot: [] as string[],
    method: [] as string[],
    linear: [] as number[],
  };
  const siteEffect = new Map<string, number>();
  const lotEffect = Array.from({ length: LOTS }, () => setting.lotDeviation * random.normal());
  for (let index = 0; index < setting.sites; index++) {
    const own = setting.siteDeviation * random.normal();
    const site = `site ${index}`;
    siteEffect.set(site, own);
    const size = Math.max(2, Math.round(setting.batchesPerSite * (0.4 + 0.3 * (index % 5))));
    for (let batch = 0; batch < size; batch++) {
      const favourite = random.next() < 0.4 ? index % METHODS.length : random.integer(METHODS.length);
      const method = METHODS[favourite] ?? 'A';
      const lot = random.integer(LOTS);
      sample.site.push(site);
      sample.lot.push(`lot ${lot}`);
      sample.method.push(method);
      sample.linear.push(
        (EFFECTS[method] ?? 0) + own + (lotEffect[lot] ?? 0) + setting.batchDeviation * random.normal(),
      );
    }
  }
  return { ...sample, siteEffect };
}

export function mixedTermsOf(sample: MixedSample) {
  return {
    fixed: [{ kind: 'factor' as const, name: 'method', values: sample.method }],
    random: [
      { name: 'site', values: sample.site },
      { name: 'lot', values: sample.lot },
    ],
  };
}
