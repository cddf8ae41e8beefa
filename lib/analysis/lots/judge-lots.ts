import { adjustPValues } from '@/lib/stats/multiplicity/adjust-p-values';
import type { CannotCompute } from '@/lib/stats/outcome';
import { dispersedObservedExpected } from '@/lib/stats/watching/dispersed-observed-expected';
import { expectedClusteredCount, type LogitSpread } from '@/lib/stats/watching/expected-clustered-count';
import type { FitAnswer, FitRequest } from '../fitting/fit-request';
import { shownLevel } from '../shown-figure';
import type { JudgedLot, LotBatch, LotsAnswer } from './lot-batch';
import { lotRequest, placeKey, placesOf } from './lot-model';

/** Fewer lots than this say too little about how much lots differ anyway. Our choice. */
export const fewestLots = 4;
/** A lot is called out when at most 1 in 20 of those called out would be false. */
const falseDiscoveryLimit = 0.05;
/** In the first pass: so far out that the lot would spoil what is expected of the others. */
const setApartLimit = 0.01;

export type Fit = (request: FitRequest) => Promise<FitAnswer | CannotCompute>;

type Expectation = {
  readonly spread: LogitSpread;
  readonly logits: ReadonlyMap<string, number>;
};

/**
 * Every lot against what its sites and methods would have lost anyway.
 *
 * A first fit of all batches gives what each place loses with a lot of no effect; lots far above it are set apart and
 * the model is fitted again without them, so that a bad lot neither raises the expectation of its own sites nor makes
 * lots look as if they always differed so much. Against the second fit each lot's count is compared with its mean and
 * variance, in which units of a batch, batches of a run, and all batches of an ordinary lot vary together.
 * False discoveries are controlled over all lots (Benjamini & Hochberg 1995, from memory).
 *
 * The order of rows does not change the answer.
 */
export async function judgeLots(given: readonly LotBatch[], fitModel: Fit): Promise<LotsAnswer> {
  // Sums of the same numbers in another order differ in their last digits.
  const batches = [...given].sort((a, b) => (a.batchId < b.batchId ? -1 : 1));
  const lots = groupByLot(batches);
  if (lots.length < fewestLots) return { kind: 'cannot', reason: 'too-few-lots' };
  const found = batches.reduce((sum, { contaminated }) => sum + contaminated, 0);
  const units = batches.reduce((sum, batch) => sum + batch.units, 0);
  if (found === 0 || found === units) return { kind: 'cannot', reason: 'no-contamination' };
  const first = await expectationFrom(batches, batches, fitModel);
  if (first === undefined) return { kind: 'cannot', reason: 'no-fit' };
  const apart = new Set(
    compareAll(lots, first)
      .filter(({ falseDiscovery, ratio }) => falseDiscovery <= setApartLimit && ratio > 1)
      .map(({ lotId }) => lotId),
  );
  const rest = batches.filter(({ lotId }) => !apart.has(lotId));
  const enough =
    lots.length - apart.size >= fewestLots - 1 && rest.some(({ contaminated }) => contaminated > 0);
  const second = apart.size > 0 && enough ? await expectationFrom(rest, batches, fitModel) : first;
  const judged = compareAll(lots, second ?? first);
  return { kind: 'judged', lots: judged, batches: batches.length };
}

function groupByLot(batches: readonly LotBatch[]): [string, LotBatch[]][] {
  const groups = new Map<string, LotBatch[]>();
  for (const batch of batches) groups.set(batch.lotId, [...(groups.get(batch.lotId) ?? []), batch]);
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1));
}

/** What a fit of `fitted` expects of every place of `wanted`; places it cannot answer are missing. */
async function expectationFrom(
  fitted: readonly LotBatch[],
  wanted: readonly LotBatch[],
  fitModel: Fit,
): Promise<Expectation | undefined> {
  const known = { method: new Set<string>(), kind: new Set<string>() };
  for (const { methodKey, kind } of fitted) {
    known.method.add(methodKey);
    known.kind.add(kind);
  }
  const places = placesOf(wanted).filter(
    ({ methodKey, kind }) => known.method.has(methodKey) && known.kind.has(kind),
  );
  const answer = await fitModel(lotRequest(fitted, places));
  if (answer.kind === 'cannot-compute') return undefined;
  const variance = (term: string) =>
    answer.fit.varianceComponents.find((component) => component.term === term)?.variance ?? 0;
  const logits = new Map<string, number>();
  places.forEach((place, at) => {
    const predicted = answer.predictions[at];
    if (predicted?.kind === 'estimate' && predicted.method === 'binomial mixed model prediction')
      logits.set(placeKey(place), predicted.group.logit);
  });
  return {
    spread: { shared: variance('lot'), run: variance('run'), batch: variance('batch') },
    logits,
  };
}

function compareAll(lots: readonly [string, LotBatch[]][], expectation: Expectation): JudgedLot[] {
  const compared = lots.flatMap(([lotId, all]) => {
    const own = all.flatMap((batch) => {
      const logit = expectation.logits.get(placeKey(batch));
      return logit === undefined ? [] : [{ ...batch, logit }];
    });
    const { expected, variance } = expectedClusteredCount(own, expectation.spread);
    if (expected === 0) return [];
    const observed = own.reduce((sum, { contaminated }) => sum + contaminated, 0);
    const answer = dispersedObservedExpected(observed, expected, variance / expected, shownLevel);
    return answer.kind === 'estimate' ? [{ lotId, own, observed, answer }] : [];
  });
  const adjusted = adjustPValues(
    compared.map(({ answer }) => answer.pUpper),
    'benjamini-hochberg',
  );
  return compared.map(({ lotId, own, observed, answer }, at) => {
    const falseDiscovery = adjusted[at] ?? 1;
    return {
      lotId,
      batches: own.length,
      runs: new Set(own.map(({ run }) => run)).size,
      sites: new Set(own.map(({ siteId }) => siteId)).size,
      units: own.reduce((sum, { units }) => sum + units, 0),
      observed,
      expected: answer.expected,
      ratio: answer.estimate,
      low: answer.interval.low,
      high: answer.interval.high,
      falseDiscovery,
      verdict: falseDiscovery <= falseDiscoveryLimit ? 'loses-more' : 'as-expected',
    };
  });
}
