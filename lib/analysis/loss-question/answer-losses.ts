import { sampleQuantile } from '@/lib/stats/sample-quantile';
import { type CountedBatch, contaminationRequest, countedBatches } from '../adjusted/contamination-request';
import { efficiencyRequest, weighedBatches } from '../adjusted/efficiency-request';
import type { ModelBatch } from '../adjusted/model-batch';
import type { LevelledOut } from '../adjusted/model-terms';
import type { Fit } from '../fitting/fit';
import type { FitAnswer } from '../fitting/fit-request';
import type { ShownFigure } from '../shown-figure';
import { type LossesAnswer, lossSources, type VariationPart } from './losses-answer';
import { sourceShares } from './source-shares';
import { tellingExamples } from './telling-examples';
import { toldSources } from './told-sources';

export type LossesData = {
  readonly batches: readonly ModelBatch[];
  /** Raw figures of all these batches together. */
  readonly raw: { readonly contamination: ShownFigure; readonly yieldOfCropped: ShownFigure };
  /** Codes of lots and treatment runs by id. */
  readonly codes: ReadonlyMap<string, string>;
  readonly levelledOut: LevelledOut;
};

/** Fewer batches than this carry no shares. Our choice. */
const fewestBatches = 30;

const sources = lossSources.filter((source) => source !== 'rest');

/**
 * Where losses come from: how much of what batches differ by, methods and species levelled out, goes with each source.
 * Sites are left as they chose their methods ('partly'), since a site's choice is the site's. The order of the batches does
 * not change the answer.
 */
export async function answerLosses(data: LossesData, fitModel: Fit): Promise<LossesAnswer> {
  // Sums of the same numbers in another order differ in their last digits.
  const batches = [...data.batches].sort((a, b) => (a.id < b.id ? -1 : 1));
  const counted = countedBatches(batches);
  // Two threads at once: neither model waits for the other.
  const [contamination, ofYield] = await Promise.all([
    contaminationPart(counted, data, fitModel),
    yieldPart({ ...data, batches }, fitModel),
  ]);
  return { ...contamination, yield: ofYield };
}

async function contaminationPart(
  counted: readonly CountedBatch[],
  { levelledOut, raw, codes }: LossesData,
  fitModel: Fit,
): Promise<Omit<LossesAnswer, 'yield'>> {
  const typicalUnits =
    counted.length === 0
      ? 0
      : sampleQuantile(
          counted.map(({ units }) => units),
          0.5,
        );
  const cannot = (reason: (VariationPart & { kind: 'cannot' })['reason']) => ({
    contamination: { kind: 'cannot', reason } as const,
    ...{ examples: [], noneOut: [] },
    chanceRatio: null,
    typicalUnits,
  });
  if (counted.length < fewestBatches) return cannot('too-few');
  const found = counted.reduce((sum, { contaminated }) => sum + contaminated, 0);
  const units = counted.reduce((sum, batch) => sum + batch.units, 0);
  if (found === 0 || found === units) return cannot('no-contamination');
  const asked = toldSources(counted, sources);
  const answer = await fitModel(
    contaminationRequest(counted, {
      levelledOut,
      sites: 'partly',
      random: [...sources, 'batch'],
      profiles: true,
    }),
  );
  if (answer.kind !== 'answer') return cannot('no-fit');
  const share = found / units;
  const chance = 1 / (typicalUnits * share * (1 - share));
  const varied = answer.fit.varianceComponents.reduce((sum, { variance }) => sum + variance, 0);
  return {
    contamination: sourceShares(answer, asked, raw.contamination, 'contamination'),
    ...tellingExamples(answer.fit, counted, asked, codes),
    chanceRatio: varied === 0 ? null : chance / varied,
    typicalUnits,
  };
}

async function yieldPart({ batches, levelledOut, raw }: LossesData, fitModel: Fit): Promise<VariationPart> {
  const cropped = weighedBatches(batches).filter(({ bePercent }) => bePercent > 0);
  if (cropped.length < fewestBatches) return { kind: 'cannot', reason: 'too-few' };
  const asked = toldSources(cropped, sources);
  const request = efficiencyRequest(cropped, {
    of: 'cropped',
    levelledOut,
    sites: 'partly',
    random: sources,
  });
  const answer: FitAnswer | { kind: 'cannot-compute' } = await fitModel({ ...request, profiles: true });
  if (answer.kind !== 'answer') return { kind: 'cannot', reason: 'no-fit' };
  return sourceShares(answer, asked, raw.yieldOfCropped, 'yield');
}
