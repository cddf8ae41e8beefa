import type { ExpectedBatch, LogitSpread } from '@/lib/stats/watching/expected-clustered-count';
import { type CountedBatch, contaminationRequest } from '../adjusted/contamination-request';
import { termLabels } from '../adjusted/model-terms';
import type { Fit } from '../fitting/fit';
import type { FitRequest } from '../fitting/fit-request';
import { cellKey, siteCells } from '../site-question/site-rows';
import type { OriginKind } from './judged-origin';

/** What a fit expects of batches with an ordinary origin, and how such batches vary together. */
export type Expectation = {
  readonly spread: LogitSpread;
  /** Log odds of a batch with an origin of no effect, by where it stands. */
  readonly logits: ReadonlyMap<string, number>;
};

/** What a fit expects wherever its batches stand: at a site, by a method, of a species. */
export async function expectationFrom(
  batches: readonly CountedBatch[],
  kind: OriginKind,
  fitModel: Fit,
): Promise<Expectation | undefined> {
  const { random, shared, crossed } = kind;
  const options = { levelledOut: { material: false, season: false }, sites: 'partly', random } as const;
  const cells = siteCells(batches, contaminationRequest(batches, options).input.fixed);
  const request = contaminationRequest(batches, { ...options, predict: cells.map(({ there }) => there) });
  const answer = await fitModel(withOrigins(request, batches, kind));
  if (answer.kind === 'cannot-compute') return undefined;
  const variance = (term: string | undefined) =>
    answer.fit.varianceComponents.find((component) => component.term === term)?.variance ?? 0;
  const logits = new Map<string, number>();
  cells.forEach(({ key }, at) => {
    const predicted = answer.predictions[at];
    if (predicted?.kind === 'estimate' && predicted.method === 'binomial mixed model prediction')
      logits.set(key, predicted.group.logit);
  });
  return {
    spread: {
      ...{ shared: variance(shared), run: variance('run'), batch: variance('batch') },
      crossed: crossed.map(variance),
    },
    logits,
  };
}

/**
 * Where origins are made of lots, origins vary in the model, too: lots of a bad maker would otherwise make lots look as if
 * they always differed so much, and hide the maker among them.
 */
function withOrigins(
  request: FitRequest,
  batches: readonly CountedBatch[],
  { shared, originOf, lotOf }: OriginKind,
): FitRequest {
  const origins = batches.map((batch) => originOf(batch) ?? '');
  const alike = new Set(origins).size === new Set(batches.map(lotOf)).size;
  if (request.kind !== 'binomial' || shared !== undefined || alike) return request;
  const { input } = request;
  return { ...request, input: { ...input, random: [...input.random, { name: 'origin', values: origins }] } };
}

/** The batches that stand where the fit expects something, as the count is worked out from them. */
export function expectedBatches(
  batches: readonly CountedBatch[],
  { logits }: Expectation,
  { crossed }: OriginKind,
): (CountedBatch & ExpectedBatch)[] {
  const labels = crossed.map((term) => termLabels(batches, term));
  return batches.flatMap((batch, row) => {
    const logit = logits.get(cellKey(batch));
    return logit === undefined ? [] : [{ ...batch, logit, crossed: labels.map((all) => all[row] ?? '') }];
  });
}
