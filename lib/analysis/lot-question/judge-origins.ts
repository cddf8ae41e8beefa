import { adjustPValues } from '@/lib/stats/multiplicity/adjust-p-values';
import { dispersedObservedExpected } from '@/lib/stats/watching/dispersed-observed-expected';
import { expectedClusteredCount } from '@/lib/stats/watching/expected-clustered-count';
import { type CountedBatch, countedBatches } from '../adjusted/contamination-request';
import type { ModelBatch } from '../adjusted/model-batch';
import type { Fit } from '../fitting/fit';
import { shownLevel } from '../shown-figure';
import { type Expectation, expectationFrom, expectedBatches } from './expectation';
import type { JudgedOrigin, OriginKind, OriginsAnswer } from './judged-origin';

/** An origin is called out when at most 1 in 20 of those called out would be false. */
const falseDiscoveryLimit = 0.05;
/** In the first pass: so far out that the origin would spoil what is expected of the others. */
const setApartLimit = 0.01;

/**
 * Every origin of a kind against what its sites and methods would have lost anyway.
 *
 * A first fit of all batches gives what each place loses with an origin of no effect; origins far above it are set apart and
 * the model is fitted again without them, so that a bad one neither raises the expectation of its own sites nor makes
 * origins look as if they always differed so much. Against the second fit each origin's count is compared with its mean and
 * variance, in which units of a batch, batches of a run and of a lot, and all batches of an ordinary origin vary together.
 * False discoveries are controlled over all origins judged (Benjamini & Hochberg 1995, from memory).
 *
 * The order of rows does not change the answer.
 */
export async function judgeOrigins(
  given: readonly ModelBatch[],
  kind: OriginKind,
  fitModel: Fit,
): Promise<OriginsAnswer> {
  const counted = countedBatches(given);
  // Sums of the same numbers in another order differ in their last digits.
  const batches = counted
    .filter((batch) => kind.originOf(batch) !== undefined)
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  const origins = groupByOrigin(batches, kind);
  if (origins.length < kind.fewestOrigins) return { kind: 'cannot', reason: 'too-few-lots' };
  const clean = (some: readonly CountedBatch[]) => some.every(({ contaminated }) => contaminated === 0);
  if (clean(batches) || batches.every(({ contaminated, units }) => contaminated === units))
    return { kind: 'cannot', reason: 'no-contamination' };
  const first = await expectationFrom(batches, kind, fitModel);
  if (first === undefined) return { kind: 'cannot', reason: 'no-fit' };
  const apart = new Set(
    compareAll(origins, first, kind)
      .filter(({ falseDiscovery, ratio }) => falseDiscovery <= setApartLimit && ratio > 1)
      .map(({ origin }) => origin),
  );
  const rest = batches.filter((batch) => !apart.has(kind.originOf(batch) ?? ''));
  const again = apart.size > 0 && origins.length - apart.size >= kind.fewestOrigins - 1 && !clean(rest);
  const second = again ? await expectationFrom(rest, kind, fitModel) : undefined;
  const judged = compareAll(origins, second ?? first, kind);
  const compared = judged.reduce((sum, origin) => sum + origin.batches, 0);
  return { kind: 'judged', origins: judged, leftOut: counted.length - compared };
}

function groupByOrigin(
  batches: readonly CountedBatch[],
  { originOf }: OriginKind,
): [string, CountedBatch[]][] {
  const groups = new Map<string, CountedBatch[]>();
  for (const batch of batches) {
    const origin = originOf(batch) ?? '';
    const own = groups.get(origin);
    if (own) own.push(batch);
    else groups.set(origin, [batch]);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1));
}

function compareAll(
  origins: readonly [string, CountedBatch[]][],
  expectation: Expectation,
  kind: OriginKind,
): JudgedOrigin[] {
  const compared = origins.flatMap(([origin, all]) => {
    const own = expectedBatches(all, expectation, kind);
    const { expected, variance } = expectedClusteredCount(own, expectation.spread);
    if (expected === 0) return [];
    const observed = own.reduce((sum, { contaminated }) => sum + contaminated, 0);
    const answer = dispersedObservedExpected(observed, expected, variance / expected, shownLevel);
    const lots = new Set(own.map(kind.lotOf)).size;
    return answer.kind === 'estimate' ? [{ origin, own, answer, lots }] : [];
  });
  const enough = compared.filter(({ lots }) => lots >= kind.fewestLots);
  const adjusted = adjustPValues(
    enough.map(({ answer }) => answer.pUpper),
    'benjamini-hochberg',
  );
  const discovery = new Map(enough.map(({ origin }, at) => [origin, adjusted[at] ?? 1]));
  return compared.map(({ origin, own, answer, lots }) => {
    const falseDiscovery = discovery.get(origin) ?? 1;
    return {
      ...{ origin, lots, batches: own.length },
      sites: new Set(own.map(({ siteId }) => siteId)).size,
      units: own.reduce((sum, { units }) => sum + units, 0),
      observed: answer.observed,
      expected: answer.expected,
      ratio: answer.estimate,
      low: answer.interval.low,
      high: answer.interval.high,
      falseDiscovery,
      verdict: verdictOf(falseDiscovery, discovery.has(origin)),
    };
  });
}

function verdictOf(falseDiscovery: number, judged: boolean): JudgedOrigin['verdict'] {
  if (!judged) return 'too-few-lots';
  return falseDiscovery <= falseDiscoveryLimit ? 'loses-more' : 'as-expected';
}
