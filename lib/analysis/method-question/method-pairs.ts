import type { AdjustedRates, RateDifference } from '../adjusted/adjusted-rates';
import type { WeighedBatch } from '../adjusted/efficiency-request';
import type { FitAnswer } from '../fitting/fit-request';
import type { ShownFigure } from '../shown-figure';
import { neededForLoss, neededForYield, worthKnowing } from './batches-needed';
import { levelledFigure } from './levelled-figure';
import type { MethodPair } from './methods-answer';
import { whatWouldTell } from './what-would-tell';
import { type Company, whyRawDiffers } from './why-raw-differs';
import { asPercentMore, type YieldDifference, yieldDifference } from './yield-differences';

/** All pairs are looked at together: a pair tells when it does after Holm's adjustment for the others. */
const significance = 0.05;

export type PairGround = {
  readonly rates: AdjustedRates;
  readonly rawOf: (
    method: string,
  ) => { readonly contamination: ShownFigure; readonly yield: ShownFigure } | undefined;
  readonly company: Company;
  /** Correlation of units of one batch. */
  readonly correlation: number;
  /** By how much methods differ from site to site in losses: variance of the model, on the logit scale. */
  readonly siteByMethod: number;
  readonly weighed: readonly WeighedBatch[];
  readonly all: FitAnswer | undefined;
  readonly cropped: FitAnswer | undefined;
};

const rateOf = (figure: ShownFigure | undefined) => (figure?.kind === 'figure' ? figure.value : null);

/** Every pair of methods that have adjusted rates, with what it tells, why raw figures differ, or what would tell. */
export function methodPairs(ground: PairGround): MethodPair[] {
  const { rates, rawOf, company, correlation, siteByMethod, weighed, all, cropped } = ground;
  const lossPairs = rates.differences.filter(({ kind }) => kind === 'difference').length;
  const yieldPairs = all?.means.method?.pairs.filter(({ kind }) => kind === 'estimate').length ?? 0;
  return rates.differences.map(losingMoreFirst).flatMap((difference): MethodPair[] => {
    const { first, second } = difference;
    const [one, other] = [rawOf(first), rawOf(second)];
    if (one === undefined || other === undefined) return [];
    const [a, b] = [rateOf(one.contamination), rateOf(other.contamination)];
    const rawPoints = a === null || b === null ? null : a - b;
    const known = difference.kind === 'difference' ? difference : undefined;
    const tells = known !== undefined && known.holmPValue <= significance && !holdsZero(known.points);
    const verdict = !tells ? 'cannot-tell' : known.points.estimate > 0 ? 'more' : 'fewer';
    const percent = rates.rates.flatMap((rate) =>
      rate.kind === 'rate' && (rate.method === first || rate.method === second) ? [rate.rate.estimate] : [],
    );
    const typical = percent.reduce((sum, value) => sum + value, 0) / Math.max(1, percent.length);
    const ofYield = yieldDifference(all, first, second);
    const ofCropped = yieldDifference(cropped, first, second);
    const yieldTells = tellsAmongAll(ofYield);
    return [
      {
        first,
        second,
        rawPoints,
        points: levelledFigure(
          [one.contamination, other.contamination],
          'points',
          'contamination',
          difference.kind === 'difference' ? difference.points : difference.reason,
          rates.fewLevels,
        ),
        verdict,
        why:
          known === undefined || rawPoints === null
            ? null
            : whyRawDiffers(first, second, rawPoints, known.points.estimate, company),
        would: tells
          ? null
          : whatWouldTell(first, second, worthKnowing.loss, company.batches, (sites) =>
              neededForLoss(
                { percent: typical, correlation, siteByMethod, batches: company.batches },
                { sites, pairs: lossPairs },
              ),
            ),
        yieldPoints: levelledFigure(
          [one.yield, other.yield],
          'points',
          'yield',
          ofYield.kind === 'difference' ? ofYield.value : ofYield.reason,
          false,
        ),
        yieldVerdict: !yieldTells ? 'cannot-tell' : ofYield.value.estimate > 0 ? 'more' : 'fewer',
        yieldWould:
          yieldTells || ofYield.kind === 'cannot' || all === undefined
            ? null
            : whatWouldTell(first, second, worthKnowing.yield, weighed, (sites) =>
                neededForYield(all.fit, { sites, pairs: yieldPairs }),
              ),
        croppedPercent: ofCropped.kind === 'difference' ? asPercentMore(ofCropped.value) : null,
        croppedTells: tellsAmongAll(ofCropped),
      },
    ];
  });
}

/** The same difference the other way round where that makes it positive: what loses more comes first. */
function losingMoreFirst(difference: RateDifference): RateDifference {
  if (difference.kind !== 'difference' || difference.points.estimate >= 0) return difference;
  const { estimate, low, high } = difference.points;
  return {
    ...difference,
    first: difference.second,
    second: difference.first,
    points: { estimate: -estimate, low: -high, high: -low },
  };
}

function tellsAmongAll(of: YieldDifference): of is Extract<YieldDifference, { kind: 'difference' }> {
  return of.kind === 'difference' && of.holmPValue <= significance && !holdsZero(of.value);
}

function holdsZero({ low, high }: { readonly low: number; readonly high: number }): boolean {
  return low <= 0 && high >= 0;
}

/**
 * The pair that the answer is about: of those that tell, the one whose raw difference points the other way, or else the one
 * of the two methods used most; without any that tells, the pair used most.
 */
export function headlineOf(pairs: readonly MethodPair[]): number | null {
  if (pairs.length === 0) return null;
  const order = pairs.map((pair, index) => {
    const { points } = pair;
    const value = points.kind === 'figure' ? points.value : 0;
    const hidden = pair.verdict !== 'cannot-tell' && pair.rawPoints !== null && pair.rawPoints * value < 0;
    return { index, weight: (hidden ? 2e9 : pair.verdict !== 'cannot-tell' ? 1e9 : 0) + points.n.batches };
  });
  return order.reduce((best, one) => (one.weight > best.weight ? one : best)).index;
}
