import { type AdjustedRates, adjustedRates, type NotAdjusted } from '../adjusted/adjusted-rates';
import { batchCorrelation } from '../adjusted/batch-correlation';
import { type CountedBatch, contaminationRequest, countedBatches } from '../adjusted/contamination-request';
import { efficiencyRequest, weighedBatches } from '../adjusted/efficiency-request';
import type { ModelBatch } from '../adjusted/model-batch';
import type { LevelledOut } from '../adjusted/model-terms';
import { modesOf, siteLogits } from '../adjusted/site-logits';
import type { ComparedRow } from '../comparison/compare';
import type { Fit } from '../fitting/fit';
import type { FitAnswer, FitRequest } from '../fitting/fit-request';
import { levelledFigure } from './levelled-figure';
import { fewestWatched, type MethodFollowUp, methodCurves } from './method-curves';
import { headlineOf, methodPairs } from './method-pairs';
import type { MethodLine, MethodsAnswer, MethodUse } from './methods-answer';

export type MethodsData = {
  readonly batches: readonly ModelBatch[];
  /** Raw figures by method, of the same batches. */
  readonly raw: readonly ComparedRow[];
  readonly followUps: readonly MethodFollowUp[];
  /** Days to which the curves are drawn. */
  readonly curveDays: number;
  readonly levelledOut: LevelledOut;
  readonly asOf: string;
};

const noRates: AdjustedRates = { rates: [], differences: [], fewLevels: false };

/** Which method works, sites being equal. The order of the batches does not change the answer. */
export async function answerMethods(data: MethodsData, fitModel: Fit): Promise<MethodsAnswer> {
  const counted = countedBatches(data.batches);
  const weighed = weighedBatches(data.batches);
  const options = { levelledOut: data.levelledOut, sites: 'within' } as const;
  const request = contaminationRequest(counted, options);
  const efficiency = (of: 'all' | 'cropped') =>
    fitted(efficiencyRequest(weighed, { ...options, of }), weighed.length, fitModel);
  // Two threads at once: the model of losses takes about as long as both of yields.
  const [contamination, [all, cropped]] = await Promise.all([
    fitted(request, counted.length, fitModel),
    efficiency('all').then(async (ofAll) => [ofAll, await efficiency('cropped')] as const),
  ]);
  const rates = contamination ? adjustedRates(contamination, request.input.fixed) : noRates;
  const rawOf = (method: string) => data.raw.find((row) => row.method === method);
  const sites = contamination
    ? siteLogits(contamination.fit, request.input.fixed, counted)
    : new Map<string, number>();
  const pairs = methodPairs({
    rates,
    rawOf,
    company: {
      batches: counted,
      siteLogits: sites,
      lotLogits: contamination ? modesOf(contamination.fit, 'spawn lot') : new Map<string, number>(),
    },
    correlation: contamination ? batchCorrelation(contamination.fit, counted) : 0,
    siteByMethod:
      contamination?.fit.varianceComponents.find(({ term }) => term === 'site x method')?.variance ?? 0,
    weighed,
    all,
    cropped,
  });
  return {
    methods: data.raw.flatMap((row) =>
      row.method === undefined ? [] : [lineOf(row.method, row, rates, all)],
    ),
    pairs,
    headline: headlineOf(pairs),
    use: methodsInUse(counted),
    siteOdds: [...sites].map(([siteId, logit]) => ({ siteId, odds: Math.exp(logit) })),
    curves: methodCurves(data.followUps, data.curveDays),
    fewestWatched,
    curveDays: data.curveDays,
    fewLevels: rates.fewLevels,
    asOf: data.asOf,
  };
}

/** A fit worth making: of at least two methods, and of more batches than a handful. */
async function fitted(request: FitRequest, batches: number, fitModel: Fit): Promise<FitAnswer | undefined> {
  if (request.meansOf === undefined || batches < 10) return undefined;
  const answer = await fitModel(request);
  return answer.kind === 'answer' ? answer : undefined;
}

function lineOf(
  method: string,
  row: ComparedRow,
  { rates, fewLevels }: AdjustedRates,
  all: FitAnswer | undefined,
): MethodLine {
  const rate = rates.find((one) => one.method === method);
  const mean = all?.means.method?.means.find((one) => one.level === method);
  const value = rate?.kind === 'rate' ? rate.rate : (rate?.reason ?? 'not-enough-data');
  const notYield: NotAdjusted =
    mean?.kind === 'cannot-compute' && mean.reason === 'not-identifiable'
      ? 'no-shared-site'
      : 'not-enough-data';
  return {
    method,
    raw: row.contamination,
    adjusted: levelledFigure([row.contamination], 'percent', 'contamination', value, fewLevels),
    further: rate?.kind === 'rate' ? rate.further : null,
    rawYield: row.yield,
    adjustedYield: levelledFigure(
      [row.yield],
      'percent',
      'yield',
      mean?.kind === 'estimate'
        ? { estimate: mean.estimate, low: Math.max(0, mean.interval.low), high: mean.interval.high }
        : notYield,
      false,
    ),
  };
}

function methodsInUse(batches: readonly CountedBatch[]): MethodUse[] {
  const counts = new Map<string, { method: string; siteId: string; batches: number }>();
  for (const { methodKey, siteId } of batches) {
    const key = `${methodKey} ${siteId}`;
    const count = counts.get(key) ?? { method: methodKey, siteId, batches: 0 };
    counts.set(key, { ...count, batches: count.batches + 1 });
  }
  return [...counts.values()].sort((a, b) =>
    `${a.method} ${a.siteId}`.localeCompare(`${b.method} ${b.siteId}`),
  );
}
