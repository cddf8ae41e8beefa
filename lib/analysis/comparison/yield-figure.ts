import type { ContainerKind } from '@/lib/growing/vocabulary';
import { ratioOfSums } from '@/lib/stats/ratio/ratio-of-sums';
import {
  type FigureHistory,
  type FigureMark,
  type FigureMethod,
  type FigureParts,
  type FigureUnit,
  fewestClusters,
  type LeftOutReason,
  type ShownFigure,
  shownLevel,
} from '../shown-figure';
import { shownInterval } from '../shown-interval';
import type { FigureAsk } from './contamination-figure';
import { clusterLabel, commonMarks, leftOutOf, sizeOf } from './figure-ground';
import type { JudgedBatch } from './judged-batch';

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

function yieldMarks(counted: readonly JudgedBatch[], ask: FigureAsk): FigureMark[] {
  const marks = commonMarks(counted, ask.pooled);
  const trimmed = counted.some(({ facts }) => facts.anyTrimmed);
  const asPicked = counted.some(({ facts }) => facts.anyAsPicked);
  if (trimmed && asPicked) marks.push('mixed-trim');
  else if (trimmed) marks.push('trimmed');
  else if (asPicked) marks.push('as-picked');
  if (counted.some(({ facts }) => facts.dryAssumed)) marks.push('assumed-moisture');
  if (counted.some(({ facts }) => facts.anyShared)) marks.push('shared-weighing');
  return marks;
}

const lifeScale: Scale = { unit: 'percent', parts: 'grams', factor: 100 };

/**
 * Sum of fresh mass over sum of dry mass (or area, or log-days) of the batches old enough to be judged. A total loss
 * is in it with 0; `which: 'cropped'` is the same over batches that gave something. `which: 'log-life'` is biological
 * efficiency over the whole life of finished logs, in percent of their dry mass: those still cropping are left out.
 */
export function yieldFigure(
  ask: FigureAsk,
  container: ContainerKind,
  which: 'all' | 'cropped' | 'log-life',
): ShownFigure {
  const scale = which === 'log-life' ? lifeScale : scaleOf(container);
  const classOf = (batch: JudgedBatch) => (which === 'log-life' ? batch.logLife : batch.yield);
  const judged = ask.batches.flatMap((batch) => {
    const counts = classOf(batch);
    return counts?.kind === 'counted' ? [{ batch, counts }] : [];
  });
  const counted = which === 'cropped' ? judged.filter(({ counts }) => counts.cropped) : judged;
  const reasonOf = (batch: JudgedBatch): LeftOutReason | undefined => {
    const counts = classOf(batch);
    if (counts?.kind === 'left-out') return counts.reason;
    return which === 'cropped' && counts?.cropped === false ? 'did-not-crop' : undefined;
  };
  const numerator = counted.map(({ counts }) => counts.freshGrams);
  const denominator = counted.map(({ counts }) => counts.over);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const method: FigureMethod = { code: 'ratio-of-sums', source: ratioSource, clusteredBy: ask.clusterBy };
  const own = counted.map(({ batch }) => batch);
  const about: FigureHistory = {
    unit: scale.unit,
    n: sizeOf(own),
    parts: { numerator: sum(numerator), denominator: sum(denominator), unit: scale.parts },
    method,
    marks: yieldMarks(own, ask),
    leftOut: leftOutOf(ask.batches, reasonOf),
    asOf: ask.asOf,
    rowsQuery: ask.rowsQuery,
  };
  if (counted.length === 0) {
    const { parts: _parts, ...rest } = about;
    return { ...rest, kind: 'cannot', reason: ask.batches.length === 0 ? 'no-batches' : 'all-left-out' };
  }
  const cluster = own.map((batch) => clusterLabel(batch, ask.clusterBy));
  if (new Set(cluster).size < fewestClusters) {
    return { ...about, kind: 'counts', reason: ask.clusterBy === 'site' ? 'too-few-sites' : 'too-few-runs' };
  }
  const answer = ratioOfSums({ numerator, denominator, cluster, level: shownLevel });
  if (answer.kind === 'cannot-compute') return { ...about, kind: 'counts', reason: 'not-enough-data' };
  return {
    ...about,
    kind: 'figure',
    value: scale.factor * answer.estimate,
    interval: shownInterval(answer.interval, scale.factor),
  };
}
