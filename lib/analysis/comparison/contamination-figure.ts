import {
  type FigureHistory,
  type FigureMethod,
  fewestClusters,
  fewGroups,
  type ShownFigure,
} from '../shown-figure';
import { shownInterval } from '../shown-interval';
import { type ClusterBy, clusterLabel, commonMarks, leftOutOf, sizeOf } from './figure-ground';
import type { JudgedBatch } from './judged-batch';
import { rememberedProportion } from './remembered-proportion';

export type FigureAsk = {
  readonly batches: readonly JudgedBatch[];
  readonly clusterBy: ClusterBy;
  readonly pooled: { readonly species: boolean; readonly materials: boolean };
  readonly asOf: string;
  readonly rowsQuery: string;
};

const clusteredSource =
  'Rao & Scott (1992), Biometrics 48:577-585: Wilson score interval with effective size, here averaged over the correlation within clusters by the beta-binomial likelihood of Williams (1975), Biometrics 31:949-952 (citations from memory; the averaging is ours)';

/**
 * Contaminated units over inoculated units, percent, of the batches whose window has passed and that somebody looked
 * at. `by: 'window'` counts units first found by the window's end, `'any-time'` all. Beds are counted, not rated.
 */
export function contaminationFigure(ask: FigureAsk, by: 'window' | 'any-time'): ShownFigure {
  const { batches, clusterBy } = ask;
  const counted = batches.flatMap((batch) =>
    batch.contamination.kind === 'counted' ? [{ batch, counts: batch.contamination }] : [],
  );
  const history = (method: FigureMethod, numerator: number, denominator: number): FigureHistory => ({
    unit: 'percent',
    n: sizeOf(counted.map(({ batch }) => batch)),
    parts: { numerator, denominator, unit: 'units' },
    method,
    marks: commonMarks(
      counted.map(({ batch }) => batch),
      ask.pooled,
    ),
    leftOut: leftOutOf(batches, (batch) =>
      batch.contamination.kind === 'left-out' ? batch.contamination.reason : undefined,
    ),
    asOf: ask.asOf,
    rowsQuery: ask.rowsQuery,
  });
  const events = counted.map(({ counts }) => (by === 'window' ? counts.byWindowEnd : counts.atAnyTime));
  const trials = counted.map(({ counts }) => counts.units);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const method: FigureMethod = {
    code: 'clustered-proportion',
    source: clusteredSource,
    clusteredBy: clusterBy,
  };
  const about = history(method, sum(events), sum(trials));
  if (counted.length === 0) {
    const { parts: _parts, ...rest } = about;
    return { ...rest, kind: 'cannot', reason: batches.length === 0 ? 'no-batches' : 'all-left-out' };
  }
  if (counted.some(({ batch }) => batch.facts.containerKind === 'bed')) {
    return {
      ...about,
      method: { code: 'sum', source: '', clusteredBy: 'nothing' },
      kind: 'counts',
      reason: 'beds-are-counted',
    };
  }
  const cluster = counted.map(({ batch }) => clusterLabel(batch, clusterBy));
  const groups = new Set(cluster).size;
  if (groups < fewestClusters) {
    return { ...about, kind: 'counts', reason: clusterBy === 'site' ? 'too-few-sites' : 'too-few-runs' };
  }
  const answer = rememberedProportion({ events, trials, cluster });
  if (answer.kind === 'cannot-compute') return { ...about, kind: 'counts', reason: 'not-enough-data' };
  return {
    ...about,
    ...(groups < fewGroups ? { marks: [...about.marks, 'few-groups' as const] } : {}),
    kind: 'figure',
    value: 100 * answer.estimate,
    interval: shownInterval(answer.interval, 100),
  };
}
