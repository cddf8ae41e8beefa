import { binomialMeansSource } from '@/lib/stats/mixed/binomial/binomial-means';
import { fitBinomialMixed } from '@/lib/stats/mixed/binomial/fit-binomial';
import { predictBinomial } from '@/lib/stats/mixed/binomial/predict-binomial';
import { profileBinomialDeviations } from '@/lib/stats/mixed/binomial/profile-binomial';
import { fitLinearMixed } from '@/lib/stats/mixed/linear/fit-linear';
import { linearMeansSource } from '@/lib/stats/mixed/linear/linear-means';
import { predictLinear } from '@/lib/stats/mixed/linear/predict-linear';
import { profileDeviations } from '@/lib/stats/mixed/linear/profile-deviations';
import type { MeansSource } from '@/lib/stats/mixed/means/marginal-means';
import { pairwiseDifferences } from '@/lib/stats/mixed/means/pairwise-differences';
import type { Interval } from '@/lib/stats/outcome';
import { type SeededRandom, seededRandom } from '@/lib/stats/random/seeded-random';
import type { LevelRow } from './calibration-row';
import { EFFECTS, type MixedSample, type MixedSetting, mixedSample, mixedTermsOf } from './mixed-samples';
import { coverageRow } from './rejection-row';

/** What the intervals of one data set held; left out where there was no answer. */
type Held = Record<string, boolean[]>;

const holds = ({ low, high }: Interval, truth: number) => low <= truth && truth <= high;

function note(held: Held, method: string, value: boolean) {
  const own = held[method] ?? [];
  own.push(value);
  held[method] = own;
}

function noteDifferences(held: Held, source: MeansSource, model: string, degrees: string) {
  const pairs = pairwiseDifferences(source, 'method').flatMap((pair) =>
    pair.kind === 'estimate' ? [pair] : [],
  );
  const first = pairs[0];
  if (!first || pairs.length < 3) return;
  const truth = (pair: typeof first) => (EFFECTS[pair.first] ?? 0) - (EFFECTS[pair.second] ?? 0);
  note(held, `${model}: difference of two methods, ${degrees}`, holds(first.interval, truth(first)));
  note(
    held,
    `${model}: all differences at once, Tukey`,
    pairs.every((pair) => holds(pair.tukeyInterval, truth(pair))),
  );
}

function linearRound(held: Held, sample: MixedSample, setting: MixedSetting) {
  const fit = fitLinearMixed({ response: sample.linear, ...mixedTermsOf(sample) });
  if (fit.kind === 'cannot-compute') return;
  noteDifferences(held, linearMeansSource(fit), 'linear', 't, Satterthwaite');
  const [between] = profileDeviations(fit);
  if (between)
    note(
      held,
      'linear: standard deviation between sites, restricted profile',
      holds(between.interval, setting.siteDeviation),
    );
  const [site] = sample.site;
  const [answer] = predictLinear(fit, [{ method: 'A', site: site ?? '' }]);
  if (answer?.kind === 'estimate') {
    // A lot that is not named counts with its whole variance: compare with a new batch's expectation in a new lot.
    note(
      held,
      'linear: expectation at a known site, any lot',
      holds(answer.group.interval, newLot(sample, setting, site ?? '')),
    );
  }
}

/** The true value for method A at a site with a lot not yet seen, drawn with the sample's own numbers. */
function newLot(sample: MixedSample, setting: MixedSetting, site: string): number {
  const draw = seededRandom(Math.abs(Math.round(1e9 * (sample.linear[0] ?? 0)))).normal();
  return (sample.siteEffect.get(site) ?? 0) + setting.lotDeviation * draw;
}

function binomialRound(
  held: Held,
  random: SeededRandom,
  sample: MixedSample,
  setting: MixedSetting,
  logit: number,
) {
  const trials = sample.linear.map(() => 8 + random.integer(16));
  const events = sample.linear.map((value, row) =>
    random.binomial(trials[row] ?? 1, 1 / (1 + Math.exp(-logit - value))),
  );
  const { fixed, random: groups } = mixedTermsOf(sample);
  const batch = { name: 'batch', values: sample.linear.map((_, row) => `batch ${row}`) };
  const fit = fitBinomialMixed({ events, trials, fixed, random: [...groups, batch] });
  if (fit.kind === 'cannot-compute') return;
  noteDifferences(held, binomialMeansSource(fit), 'binomial', 'normal on the logit');
  const [between] = profileBinomialDeviations(fit);
  if (between)
    note(
      held,
      'binomial: standard deviation between sites, profile',
      holds(between.interval, setting.siteDeviation),
    );
  const [answer] = predictBinomial(fit, [{ method: 'A', site: 'nowhere' }]);
  if (answer?.kind === 'estimate') {
    note(
      held,
      'binomial: probability of a method at a typical site, t on the logit',
      holds(answer.population.interval, 1 / (1 + Math.exp(-logit))),
    );
  }
}

/** Coverage of the intervals of mixed models with few and many sites. */
export function mixedCalibration(replicates: number): LevelRow[] {
  const rows: LevelRow[] = [];
  for (const sites of [4, 8, 24]) {
    for (const siteDeviation of [0.2, 0.7]) {
      const setting = { sites, batchesPerSite: 10, siteDeviation, lotDeviation: 0.3, batchDeviation: 0.5 };
      const random = seededRandom(9_000 + sites * 10 + Math.round(10 * siteDeviation));
      const text = `${sites} sites of 4 to 16 batches, sd ${siteDeviation} between sites`;
      const linear: Held = {};
      for (let round = 0; round < replicates; round++)
        linearRound(linear, mixedSample(random, setting), setting);
      rows.push(...Object.entries(linear).map(([method, held]) => coverageRow(method, text, held)));
      for (const logit of [-2.2, -1]) {
        const binomial: Held = {};
        for (let round = 0; round < replicates / 2; round++) {
          binomialRound(binomial, random, mixedSample(random, setting), setting, logit);
        }
        const rate = `, rate ${(100 / (1 + Math.exp(-logit))).toFixed(0)} %`;
        rows.push(
          ...Object.entries(binomial).map(([method, held]) => coverageRow(method, text + rate, held)),
        );
      }
    }
  }
  return rows.sort((a, b) => a.method.localeCompare(b.method));
}
