import type { ContainerKind } from '@/lib/growing/vocabulary';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import {
  type FigureHistory,
  type FigureMark,
  type FigureMethod,
  type FigureParts,
  type FigureUnit,
  fewestClusters,
  type ShownFigure,
  shownLevel,
} from '../shown-figure';
import { shownInterval } from '../shown-interval';
import type { FigureAbout, FigureAsk } from './contamination-figure';
import { commonMarks, type FigureGround, groundOf, type MarkedCounts } from './figure-ground';
import type { JudgedBatch } from './judged-batch';
import { remembered } from './remembered';

const ratioSource =
  'Cochran (1977), Sampling Techniques, 3rd edition: ratio estimator over clusters; interval by the jackknife over clusters with the degrees of freedom of Bell & McCaffrey (2002), Survey Methodology 28:169-181 (citations from memory)';
/** The Gregorian mean, as in the yield of one batch of logs. */
const daysPerYear = 365.2425;

type Scale = { readonly unit: FigureUnit; readonly parts: FigureParts['unit']; readonly factor: number };

/** BE of bags and the like in percent; beds in kg per m2; logs in g per log and year. Never one for another. */
export function scaleOf(container: ContainerKind): Scale {
  if (container === 'bed')
    return { unit: 'kilograms-per-square-metre', parts: 'grams-and-square-centimetres', factor: 10 };
  if (container === 'log')
    return { unit: 'grams-per-log-year', parts: 'grams-and-log-days', factor: daysPerYear };
  return { unit: 'percent', parts: 'grams', factor: 100 };
}

function yieldMarks(marked: MarkedCounts, pooled: FigureAbout['pooled']): FigureMark[] {
  const marks = commonMarks(marked, pooled);
  if (marked.trimmed > 0 && marked.asPicked > 0) marks.push('mixed-trim');
  else if (marked.trimmed > 0) marks.push('trimmed');
  else if (marked.asPicked > 0) marks.push('as-picked');
  if (marked.dryAssumed > 0) marks.push('assumed-moisture');
  if (marked.shared > 0) marks.push('shared-weighing');
  return marks;
}

const lifeScale: Scale = { unit: 'percent', parts: 'grams', factor: 100 };

export type YieldWhich = 'all' | 'cropped' | 'log-life';

/**
 * Sum of fresh mass over sum of dry mass (or area, or log-days) of the batches old enough to be judged. A total loss
 * is in it with 0; `which: 'cropped'` is the same over batches that gave something. `which: 'log-life'` is biological
 * efficiency over the whole life of finished logs, in percent of their dry mass: those still cropping are left out.
 */
export function yieldFigure(ask: FigureAsk, container: ContainerKind, which: YieldWhich): ShownFigure {
  const classOf = (batch: JudgedBatch) => (which === 'log-life' ? batch.logLife : batch.yield);
  const ground = groundOf(
    ask.batches,
    ask.clusterBy,
    (batch) => {
      const counts = classOf(batch);
      if (counts?.kind !== 'counted' || (which === 'cropped' && !counts.cropped)) return undefined;
      return { numerator: counts.freshGrams, denominator: counts.over };
    },
    (batch) => {
      const counts = classOf(batch);
      if (counts?.kind === 'left-out') return counts.reason;
      return which === 'cropped' && counts?.cropped === false ? 'did-not-crop' : undefined;
    },
  );
  return ratioFigure(ground, ask, container, which);
}

const ratioOf = remembered((numerator, denominator) =>
  ratioOfSums({
    ...{ numerator, denominator, level: shownLevel },
    cluster: numerator.map((_, index) => String(index)),
  }),
);

/** The ratio that a ground gives, with its interval. */
export function ratioFigure(
  ground: FigureGround,
  ask: FigureAbout,
  container: ContainerKind,
  which: YieldWhich,
): ShownFigure {
  const scale = which === 'log-life' ? lifeScale : scaleOf(container);
  const { size, clusters } = ground;
  const numerator = clusters.map((one) => one.numerator);
  const denominator = clusters.map((one) => one.denominator);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const method: FigureMethod = { code: 'ratio-of-sums', source: ratioSource, clusteredBy: ask.clusterBy };
  const about: FigureHistory = {
    unit: scale.unit,
    n: size,
    parts: { numerator: sum(numerator), denominator: sum(denominator), unit: scale.parts },
    method,
    marks: yieldMarks(ground.marked, ask.pooled),
    leftOut: ground.leftOut,
    asOf: ask.asOf,
    rowsQuery: ask.rowsQuery,
  };
  if (size.batches === 0) {
    const { parts: _parts, ...rest } = about;
    return { ...rest, kind: 'cannot', reason: ground.asked === 0 ? 'no-batches' : 'all-left-out' };
  }
  if (clusters.length < fewestClusters) {
    return { ...about, kind: 'counts', reason: ask.clusterBy === 'site' ? 'too-few-sites' : 'too-few-runs' };
  }
  const answer = ratioOf(numerator, denominator);
  if (answer.kind === 'cannot-compute') return { ...about, kind: 'counts', reason: 'not-enough-data' };
  return {
    ...about,
    kind: 'figure',
    value: scale.factor * answer.estimate,
    interval: shownInterval(answer.interval, scale.factor),
  };
}
