import { varianceShares } from '@/lib/stats/mixed/variance-shares';
import type { Limited } from '../adjusted/adjusted-rates';
import type { FitAnswer } from '../fitting/fit-request';
import { type FigureMethod, type ShownFigure, shownLevel } from '../shown-figure';
import { type LossSource, lossSources, type SourceShare, type VariationPart } from './losses-answer';
import type { AskedSource } from './told-sources';

const limitsSource =
  'profile likelihood of each variance: Bates, Mächler, Bolker & Walker (2015), Journal of Statistical Software 67(1), or above 10,000 batches its curvature at the estimate: Anscombe (1964), Annals of the Institute of Statistical Mathematics 16:1-19; of their shares: Graybill & Wang (1980), JASA 75:869-873, and Zou & Donner (2008), Statistics in Medicine 27:1693-1702 (citations from memory)';

const methods = {
  contamination: {
    code: 'contamination-shares',
    source: `Binomial mixed model by the Laplace approximation; ${limitsSource}`,
    clusteredBy: 'everything-random',
  },
  yield: {
    code: 'yield-shares',
    source: `Linear mixed model of the logarithm by REML; ${limitsSource}`,
    clusteredBy: 'everything-random',
  },
} as const satisfies Record<string, FigureMethod>;

/** Fewer levels than this make limits too narrow; the figure says so. */
const enoughLevels = 8;

/**
 * The share of each source in what batches differ by, from a fit with its profiles. What is left from batch to batch is the
 * batch's own term (contamination) or the residual (yield).
 */
export function sourceShares(
  answer: FitAnswer,
  asked: readonly AskedSource[],
  ground: ShownFigure,
  of: keyof typeof methods,
): VariationPart {
  const { fit, profiles } = answer;
  const variances = new Map(fit.varianceComponents.map(({ term, variance }) => [restOr(term), variance]));
  if (fit.residualStandardDeviation !== undefined) variances.set('rest', fit.residualStandardDeviation ** 2);
  const sources = lossSources.filter((source) => variances.has(source));
  const limits = new Map(profiles.map(({ term, interval }) => [restOr(term), interval]));
  const shares = varianceShares(
    sources.map((source) => ({
      variance: variances.get(source) ?? 0,
      low: (limits.get(source)?.low ?? 0) ** 2,
      high: (limits.get(source)?.high ?? Number.POSITIVE_INFINITY) ** 2,
    })),
  );
  if ('kind' in shares) return { kind: 'cannot', reason: 'nothing-varies' };
  const shareOf = (source: LossSource, levels: number): SourceShare => {
    const share = shares[sources.indexOf(source)] ?? { estimate: 0, low: 0, high: 1 };
    const percent = { estimate: 100 * share.estimate, low: 100 * share.low, high: 100 * share.high };
    return {
      kind: 'share',
      source,
      levels,
      figure: figureOf(percent, ground, of, levels < enoughLevels),
      percent,
      told: (limits.get(source)?.low ?? 0) > 0 && share.low > 0,
    };
  };
  return {
    kind: 'shares',
    batches: fit.observations,
    sources: [
      ...asked.map(({ source, levels, untold }) =>
        untold === null ? shareOf(source, levels) : ({ kind: 'cannot', source, levels, ...untold } as const),
      ),
      shareOf('rest', fit.observations),
    ],
  };
}

/** The batch's own term and the residual are what is left. */
function restOr(term: string | undefined): string {
  return term === undefined || term === 'batch' ? 'rest' : term;
}

function figureOf(
  { estimate, low, high }: Limited,
  ground: ShownFigure,
  of: keyof typeof methods,
  fewLevels: boolean,
): ShownFigure {
  const about = {
    unit: 'percent',
    n: ground.n,
    method: methods[of],
    marks: fewLevels ? (['few-levels'] as const) : [],
    leftOut: ground.leftOut,
    asOf: ground.asOf,
    rowsQuery: ground.rowsQuery,
  } as const;
  if (ground.kind === 'cannot') return { ...about, kind: 'cannot', reason: ground.reason };
  return {
    ...about,
    parts: ground.parts,
    kind: 'figure',
    value: estimate,
    interval: { kind: 'interval', low, high, level: shownLevel, method: methods[of].code },
  };
}
