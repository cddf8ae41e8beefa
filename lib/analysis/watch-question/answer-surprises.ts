import { clusteredTail } from '@/lib/stats/watching/clustered-tail';
import { type CountedBatch, contaminationRequest, countedBatches } from '../adjusted/contamination-request';
import { efficiencyRequest, weighedBatches } from '../adjusted/efficiency-request';
import { isLotKnown, type ModelBatch } from '../adjusted/model-batch';
import type { Fit } from '../fitting/fit';
import { cellKey, siteCells } from '../site-question/site-rows';
import type { SurprisesAnswer } from './surprises-answer';

export type SurprisesData = {
  readonly batches: readonly ModelBatch[];
  /** The day from which the yield of each batch counts. */
  readonly yieldDays: Readonly<Record<string, string>>;
};

/** Outside so far that one batch in a thousand would be there by chance, on one side. Our choice: few lines, mostly true. */
const tailLimit = 0.001;
const fewestBatches = 30;
const levelledOut = { material: false, season: false };

/**
 * Batches far outside what their site, method and species would lead to expect: the predictive distribution of one more batch
 * there, from the mixed models, with spawn lot, run and batch unknown. The batch is among those the model was fitted to,
 * which draws the prediction towards it: what is called out here would be further out without it.
 */
export async function answerSurprises(
  { batches, yieldDays }: SurprisesData,
  fitModel: Fit,
): Promise<SurprisesAnswer> {
  const lotLast: Record<string, string> = {};
  for (const batch of countedBatches(batches)) {
    if (isLotKnown(batch) && batch.assessedOn > (lotLast[batch.spawnLot] ?? ''))
      lotLast[batch.spawnLot] = batch.assessedOn;
  }
  return {
    losses: await losses(countedBatches(batches), fitModel),
    yields: await yields(batches, yieldDays, fitModel),
    lotLast,
  };
}

async function losses(batches: readonly CountedBatch[], fitModel: Fit): Promise<SurprisesAnswer['losses']> {
  const found = batches.reduce((sum, { contaminated }) => sum + contaminated, 0);
  if (batches.length < fewestBatches || found === 0) return [];
  const options = { levelledOut, sites: 'partly' } as const;
  const cells = siteCells(batches, contaminationRequest(batches, options).input.fixed);
  const answer = await fitModel(
    contaminationRequest(batches, { ...options, predict: cells.map(({ there }) => there) }),
  );
  if (answer.kind === 'cannot-compute') return [];
  const at = new Map(cells.map(({ key }, row) => [key, answer.predictions[row]]));
  return batches.flatMap((batch) => {
    const there = at.get(cellKey(batch));
    if (there?.kind !== 'estimate' || there.method !== 'binomial mixed model prediction') return [];
    const { logit, logitStandardError } = there.group;
    const tail = (events: number) => clusteredTail(events, batch.units, logit, logitStandardError);
    if (tail(batch.contaminated) > tailLimit) return [];
    let most = 0;
    while (most < batch.units && tail(most + 1) > tailLimit) most += 1;
    const { id: batchId, siteId, units, assessedOn: on } = batch;
    return [{ batchId, siteId, units, on, found: batch.contaminated, mostLikely: most }];
  });
}

async function yields(
  all: readonly ModelBatch[],
  yieldDays: Readonly<Record<string, string>>,
  fitModel: Fit,
): Promise<SurprisesAnswer['yields']> {
  const cropped = weighedBatches(all).filter(({ bePercent }) => bePercent > 0);
  if (cropped.length < fewestBatches) return [];
  const request = efficiencyRequest(cropped, { of: 'cropped', levelledOut, sites: 'partly' });
  const placed = cropped.map((batch) => ({ ...batch, contaminated: 0 }));
  const cells = siteCells(placed, request.input.fixed);
  const predict = cells.map(({ there }) => there);
  const answer = await fitModel({ ...request, predict, level: 1 - 2 * tailLimit });
  if (answer.kind === 'cannot-compute') return [];
  const at = new Map(cells.map(({ key }, row) => [key, answer.predictions[row]]));
  return placed.flatMap((batch) => {
    const there = at.get(cellKey(batch));
    if (there?.kind !== 'estimate' || there.method !== 'linear mixed model prediction') return [];
    const { interval } = there.observation;
    const { bePercent, id: batchId, siteId } = batch;
    const [low, high] = [Math.exp(interval.low), Math.exp(interval.high)];
    if (bePercent >= low && bePercent <= high) return [];
    const side = bePercent > high ? ('above' as const) : ('below' as const);
    return [{ batchId, siteId, on: yieldDays[batchId] ?? batch.inoculatedOn, side, bePercent, low, high }];
  });
}
