import { adjustPValues } from '@/lib/stats/multiplicity/adjust-p-values';
import { dispersedObservedExpected } from '@/lib/stats/watching/dispersed-observed-expected';
import { expectedClusteredCount, type LogitSpread } from '@/lib/stats/watching/expected-clustered-count';
import { type CountedBatch, contaminationRequest, countedBatches } from '../adjusted/contamination-request';
import { isLotKnown, type ModelBatch } from '../adjusted/model-batch';
import type { Fit } from '../fitting/fit';
import { shownLevel } from '../shown-figure';
import { cellKey, siteCells } from '../site-question/site-rows';
import type { JudgedLot, LotsAnswer } from './lots-answer';

/** Fewer lots than this say too little about how much lots differ anyway. Our choice. */
const fewestLots = 4;
/** A lot is called out when at most 1 in 20 of those called out would be false. */
const falseDiscoveryLimit = 0.05;
/** In the first pass: so far out that the lot would spoil what is expected of the others. */
const setApartLimit = 0.01;

type Expectation = {
  readonly spread: LogitSpread;
  /** Log odds of a batch with a lot of no effect, by where it stands. */
  readonly logits: ReadonlyMap<string, number>;
};

/**
 * Every spawn lot against what its sites and methods would have lost anyway.
 *
 * A first fit of all batches gives what each place loses with a lot of no effect; lots far above it are set apart and
 * the model is fitted again without them, so that a bad lot neither raises the expectation of its own sites nor makes
 * lots look as if they always differed so much. Against the second fit each lot's count is compared with its mean and
 * variance, in which units of a batch, batches of a run, and all batches of an ordinary lot vary together.
 * False discoveries are controlled over all lots (Benjamini & Hochberg 1995, from memory).
 *
 * The order of rows does not change the answer.
 */
export async function answerLots(given: readonly ModelBatch[], fitModel: Fit): Promise<LotsAnswer> {
  const counted = countedBatches(given);
  // Sums of the same numbers in another order differ in their last digits.
  const batches = counted.filter(isLotKnown).sort((a, b) => (a.id < b.id ? -1 : 1));
  const lots = groupByLot(batches);
  if (lots.length < fewestLots) return { kind: 'cannot', reason: 'too-few-lots' };
  const clean = (some: readonly CountedBatch[]) => some.every(({ contaminated }) => contaminated === 0);
  if (clean(batches) || batches.every(({ contaminated, units }) => contaminated === units))
    return { kind: 'cannot', reason: 'no-contamination' };
  const first = await expectationFrom(batches, fitModel);
  if (first === undefined) return { kind: 'cannot', reason: 'no-fit' };
  const apart = new Set(
    compareAll(lots, first)
      .filter(({ falseDiscovery, ratio }) => falseDiscovery <= setApartLimit && ratio > 1)
      .map(({ lotId }) => lotId),
  );
  const rest = batches.filter(({ spawnLot }) => !apart.has(spawnLot));
  const again = apart.size > 0 && lots.length - apart.size >= fewestLots - 1 && !clean(rest);
  const second = again ? await expectationFrom(rest, fitModel) : undefined;
  const judged = compareAll(lots, second ?? first);
  const compared = judged.reduce((sum, lot) => sum + lot.batches, 0);
  return { kind: 'judged', lots: judged, leftOut: counted.length - compared };
}

function groupByLot(batches: readonly CountedBatch[]): [string, CountedBatch[]][] {
  const groups = new Map<string, CountedBatch[]>();
  for (const batch of batches) groups.set(batch.spawnLot, [...(groups.get(batch.spawnLot) ?? []), batch]);
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1));
}

/** What a fit expects wherever its batches stand: at a site, by a method, of a species. */
async function expectationFrom(
  batches: readonly CountedBatch[],
  fitModel: Fit,
): Promise<Expectation | undefined> {
  const options = { levelledOut: { material: false, season: false }, sites: 'partly' } as const;
  const cells = siteCells(batches, contaminationRequest(batches, options).input.fixed);
  const answer = await fitModel(
    contaminationRequest(batches, { ...options, predict: cells.map(({ there }) => there) }),
  );
  if (answer.kind === 'cannot-compute') return undefined;
  const variance = (term: string) =>
    answer.fit.varianceComponents.find((component) => component.term === term)?.variance ?? 0;
  const logits = new Map<string, number>();
  cells.forEach(({ key }, at) => {
    const predicted = answer.predictions[at];
    if (predicted?.kind === 'estimate' && predicted.method === 'binomial mixed model prediction')
      logits.set(key, predicted.group.logit);
  });
  return {
    spread: { shared: variance('spawn lot'), run: variance('run'), batch: variance('batch') },
    logits,
  };
}

function compareAll(lots: readonly [string, CountedBatch[]][], { logits, spread }: Expectation): JudgedLot[] {
  const compared = lots.flatMap(([lotId, all]) => {
    const own = all.flatMap((batch) => {
      const logit = logits.get(cellKey(batch));
      return logit === undefined ? [] : [{ ...batch, logit }];
    });
    const { expected, variance } = expectedClusteredCount(own, spread);
    if (expected === 0) return [];
    const observed = own.reduce((sum, { contaminated }) => sum + contaminated, 0);
    const answer = dispersedObservedExpected(observed, expected, variance / expected, shownLevel);
    return answer.kind === 'estimate' ? [{ lotId, own, answer }] : [];
  });
  const adjusted = adjustPValues(
    compared.map(({ answer }) => answer.pUpper),
    'benjamini-hochberg',
  );
  return compared.map(({ lotId, own, answer }, at) => {
    const falseDiscovery = adjusted[at] ?? 1;
    return {
      lotId,
      batches: own.length,
      sites: new Set(own.map(({ siteId }) => siteId)).size,
      units: own.reduce((sum, { units }) => sum + units, 0),
      observed: answer.observed,
      expected: answer.expected,
      ratio: answer.estimate,
      low: answer.interval.low,
      high: answer.interval.high,
      falseDiscovery,
      verdict: falseDiscovery <= falseDiscoveryLimit ? 'loses-more' : 'as-expected',
    };
  });
}
