import { clusteredProportion } from '@/lib/stats/clustered/clustered-proportion';
import {
  type FigureHistory,
  type FigureMethod,
  fewestClusters,
  fewGroups,
  type ShownFigure,
  shownLevel,
} from '../shown-figure';
import { shownInterval } from '../shown-interval';
import { type ClusterBy, commonMarks, type FigureGround, groundOf } from './figure-ground';
import type { JudgedBatch } from './judged-batch';
import { remembered } from './remembered';

/** What is said of a figure whatever it rests on. */
export type FigureAbout = {
  readonly clusterBy: ClusterBy;
  readonly pooled: { readonly species: boolean; readonly materials: boolean };
  readonly asOf: string;
  readonly rowsQuery: string;
};

export type FigureAsk = FigureAbout & { readonly batches: readonly JudgedBatch[] };

const clusteredSource =
  'Rao & Scott (1992), Biometrics 48:577-585: Wilson score interval with effective size, here averaged over the correlation within clusters by the beta-binomial likelihood of Williams (1975), Biometrics 31:949-952 (citations from memory; the averaging is ours)';

const proportionOf = remembered((events, trials) =>
  clusteredProportion({ events, trials, level: shownLevel }),
);

/**
 * Contaminated units over inoculated units, percent, of the batches whose window has passed and that somebody looked
 * at. `by: 'window'` counts units first found by the window's end, `'any-time'` all. Beds are counted, not rated.
 */
export function contaminationFigure(ask: FigureAsk, by: 'window' | 'any-time'): ShownFigure {
  const ground = groundOf(
    ask.batches,
    ask.clusterBy,
    ({ contamination }) =>
      contamination.kind === 'counted'
        ? {
            numerator: by === 'window' ? contamination.byWindowEnd : contamination.atAnyTime,
            denominator: contamination.units,
          }
        : undefined,
    ({ contamination }) => (contamination.kind === 'left-out' ? contamination.reason : undefined),
  );
  const beds = ask.batches.some(
    ({ facts, contamination }) => contamination.kind === 'counted' && facts.containerKind === 'bed',
  );
  return rateFigure(ground, ask, beds);
}

/** The rate that a ground gives, with its interval; of beds the counts. */
export function rateFigure(ground: FigureGround, ask: FigureAbout, beds: boolean): ShownFigure {
  const { size, clusters } = ground;
  const events = clusters.map(({ numerator }) => numerator);
  const trials = clusters.map(({ denominator }) => denominator);
  const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
  const method: FigureMethod = {
    code: 'clustered-proportion',
    source: clusteredSource,
    clusteredBy: ask.clusterBy,
  };
  const about: FigureHistory = {
    unit: 'percent',
    n: size,
    parts: { numerator: sum(events), denominator: sum(trials), unit: 'units' },
    method,
    marks: commonMarks(ground.marked, ask.pooled),
    leftOut: ground.leftOut,
    asOf: ask.asOf,
    rowsQuery: ask.rowsQuery,
  };
  if (size.batches === 0) {
    const { parts: _parts, ...rest } = about;
    return { ...rest, kind: 'cannot', reason: ground.asked === 0 ? 'no-batches' : 'all-left-out' };
  }
  if (beds) {
    return {
      ...about,
      method: { code: 'sum', source: '', clusteredBy: 'nothing' },
      kind: 'counts',
      reason: 'beds-are-counted',
    };
  }
  if (clusters.length < fewestClusters) {
    return { ...about, kind: 'counts', reason: ask.clusterBy === 'site' ? 'too-few-sites' : 'too-few-runs' };
  }
  const answer = proportionOf(events, trials);
  if (answer.kind === 'cannot-compute') return { ...about, kind: 'counts', reason: 'not-enough-data' };
  return {
    ...about,
    ...(clusters.length < fewGroups ? { marks: [...about.marks, 'few-groups' as const] } : {}),
    kind: 'figure',
    value: 100 * answer.estimate,
    interval: shownInterval(answer.interval, 100),
  };
}
