import { requireEventsOfTrials, requireOpenProbability } from '../check-argument';
import { chiSquareSurvival } from '../distribution/chi-square';
import { normalDensity, normalQuantile } from '../distribution/normal';
import { ArgumentError, type CannotCompute, cannotCompute } from '../outcome';
import { sampleQuantile } from '../sample-quantile';

/** A site's count of events among its units. */
export type FunnelSite = { readonly label: string; readonly events: number; readonly units: number };

export type FunnelPoint = {
  readonly label: string;
  readonly events: number;
  readonly units: number;
  readonly proportion: number;
  /** Standard error of the proportion if the site's rate is the target: sqrt(t (1 - t) / units). */
  readonly standardError: number;
  /** (proportion - target) / standardError. */
  readonly z: number;
  /** z pulled in to the winsorising limits. */
  readonly winsorisedZ: number;
  /** (proportion - target) / sqrt(standardError^2 + betweenVariance). */
  readonly additiveZ: number;
};

export type Funnel = {
  readonly kind: 'funnel';
  readonly target: number;
  readonly points: readonly FunnelPoint[];
  /** Labels of sites without units. */
  readonly leftOut: readonly string[];
  readonly winsorLimits: readonly [low: number, high: number];
  /** Mean of squared z, winsorised and not: 1 when sites differ by chance only. */
  readonly dispersion: number;
  readonly rawDispersion: number;
  /** Chi-square test (df = sites) that winsorised dispersion is 1. */
  readonly overdispersionPValue: number;
  /** Variance of true site rates beyond chance (additive model), as a squared fraction; 0 when there is none. */
  readonly betweenVariance: number;
  /**
   * The same with the dispersion divided by what winsorising leaves of a normal spread (0.68 at a tenth). Draw limits
   * with this one: with `betweenVariance` twice as many sites as stated fall outside (CALIBRATION.md).
   */
  readonly unshrunkBetweenVariance: number;
  readonly method: string;
};

/**
 * Compares sites with a target through a funnel: z-scores against the target, and how far sites as a whole spread
 * beyond chance (units within a batch, and batches within a site, are alike). The overdispersion is judged on
 * z-scores winsorised at the quantiles `winsorise` and 1 - `winsorise`, so that the sites a funnel is to find do not
 * widen its limits.
 *
 * dispersion = sum(z_w^2) / I; betweenVariance = max(0, (I dispersion - (I - 1)) / (sum w - sum w^2 / sum w)),
 * w = 1 / se^2. Source: Spiegelhalter (2005, Qual Saf Health Care 14, 347-351, and Statistics in Medicine 24,
 * 1185-1202), from memory. With fewer than about 10 sites the winsorised dispersion is a rough figure.
 *
 * @param target known rate 0-1; without it the pooled rate of all sites.
 * @throws ArgumentError for impossible counts, a label that occurs twice, a target or `winsorise` out of range.
 */
export function funnel(
  sites: readonly FunnelSite[],
  options: { readonly target?: number | undefined; readonly winsorise: number },
): Funnel | CannotCompute {
  if (!(options.winsorise >= 0 && options.winsorise < 0.5)) {
    throw new ArgumentError('winsorise', `must be at least 0 and below 0.5, not ${options.winsorise}`);
  }
  if (options.target !== undefined) requireOpenProbability('target', options.target);
  const labels = new Set<string>();
  for (const { label, events, units } of sites) {
    if (labels.has(label)) throw new ArgumentError('sites', `label "${label}" occurs twice`);
    labels.add(label);
    requireEventsOfTrials('events', events, 'units', units);
  }
  const used = sites.filter(({ units }) => units > 0);
  if (used.length === 0) return cannotCompute('no-data', 'No site has any units.');
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const target = options.target ?? sum(used.map((site) => site.events)) / sum(used.map((site) => site.units));
  if (target === 0 || target === 1) {
    return cannotCompute('no-variation', 'All units of all sites ended the same way, so no site stands out.');
  }
  const scored = used.map((site) => {
    const proportion = site.events / site.units;
    const standardError = Math.sqrt((target * (1 - target)) / site.units);
    return { ...site, proportion, standardError, z: (proportion - target) / standardError };
  });
  const zs = scored.map(({ z }) => z);
  const low = sampleQuantile(zs, options.winsorise);
  const high = sampleQuantile(zs, 1 - options.winsorise);
  const winsorised = zs.map((z) => Math.min(Math.max(z, low), high));
  const count = scored.length;
  const squares = sum(winsorised.map((z) => z * z));
  const weights = scored.map(({ standardError }) => 1 / standardError ** 2);
  const spread = sum(weights) - sum(weights.map((w) => w * w)) / sum(weights);
  // One site leaves nothing to differ from.
  const varianceFrom = (sumOfSquares: number) =>
    count === 1 ? 0 : Math.max(0, (sumOfSquares - (count - 1)) / spread);
  const betweenVariance = varianceFrom(squares);
  return {
    kind: 'funnel',
    target,
    points: scored.map((point, index) => ({
      ...point,
      winsorisedZ: winsorised[index] ?? point.z,
      additiveZ: (point.proportion - target) / Math.sqrt(point.standardError ** 2 + betweenVariance),
    })),
    leftOut: sites.filter(({ units }) => units === 0).map(({ label }) => label),
    winsorLimits: [low, high],
    dispersion: squares / count,
    rawDispersion: sum(zs.map((z) => z * z)) / count,
    overdispersionPValue: chiSquareSurvival(squares, count),
    betweenVariance,
    unshrunkBetweenVariance: varianceFrom(squares / winsorisedShare(options.winsorise)),
    method: `funnel against ${options.target === undefined ? 'the pooled rate' : 'a given target'}, z-scores winsorised`,
  };
}

/** Variance of a standard normal winsorised at its quantiles q and 1 - q: 1 - 2 (a phi(a) + q - a^2 q), a = z(1 - q). */
function winsorisedShare(q: number): number {
  if (q === 0) return 1;
  const a = normalQuantile(1 - q);
  return 1 - 2 * (a * normalDensity(a) + q - a * a * q);
}
