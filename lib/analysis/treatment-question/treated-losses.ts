import { quarterOf, quarters } from '@/lib/growing/quarter';
import { runStandings } from '@/lib/growing/window-margin';
import type { ModelBatch } from '../adjusted/model-batch';
import { contaminationFigure } from '../comparison/contamination-figure';
import type { ShownFigure } from '../shown-figure';
import type { TreatedBatch } from './batch-standing';
import type { JudgedRun } from './judged-run';
import type { SeasonLoss, StandingLoss, StartLoss } from './treatments-answer';

/** How the batches were asked for: what pools species and materials, and when they were read. */
export type LossGround = {
  readonly pooled: { readonly species: boolean; readonly materials: boolean };
  readonly asOf: string;
};

function lossOf(treated: readonly TreatedBatch[], { pooled, asOf }: LossGround): ShownFigure {
  const batches = treated.map(({ batch }) => batch);
  return contaminationFigure({ batches, clusterBy: 'treatment-run', pooled, asOf, rowsQuery: '' }, 'window');
}

const distinct = (values: readonly string[]) => [...new Set(values)].sort();

/**
 * Losses by how far inside or outside its window the run lay; only standings that occurred.
 *
 * @param runs all runs that treated the batches: of several runs of one batch only the one that decides is in `treated`.
 */
export function lossesByStanding(
  treated: readonly TreatedBatch[],
  runs: readonly JudgedRun[],
  ground: LossGround,
): StandingLoss[] {
  return runStandings.flatMap((standing) => {
    const own = treated.filter(({ run }) => run.standing === standing);
    const alike = runs.filter((run) => run.standing === standing);
    if (alike.length === 0) return [];
    return [
      {
        standing,
        runs: alike.length,
        siteIds: distinct(alike.map(({ siteId }) => siteId)),
        loss: lossOf(own, ground),
      },
    ];
  });
}

/**
 * Losses by the season of inoculation at the site, of runs inside their window and of those that did not hold it; those that
 * lasted longer than it allows are neither.
 *
 * @param batches the same batches as the models take them, with their season.
 */
export function lossesBySeason(
  treated: readonly TreatedBatch[],
  batches: readonly Pick<ModelBatch, 'id' | 'season'>[],
  ground: LossGround,
): SeasonLoss[] {
  const seasonById = new Map(batches.map(({ id, season }) => [id, season]));
  const held = treated.filter(({ run }) => run.standing !== 'unknown' && run.standing !== 'long');
  return quarters.flatMap((season) => {
    const own = held.filter(({ batch }) => seasonById.get(batch.facts.id) === season);
    if (own.length === 0) return [];
    return [
      {
        season,
        quarters: quarters.filter((quarter) =>
          own.some(({ batch }) => quarterOf(batch.facts.inoculatedOn) === quarter),
        ),
        inside: lossOf(
          own.filter(({ run }) => run.standing !== 'outside'),
          ground,
        ),
        outside: lossOf(
          own.filter(({ run }) => run.standing === 'outside'),
          ground,
        ),
      },
    ];
  });
}

const bands = [
  [null, 10],
  [10, 15],
  [15, 20],
  [20, null],
] as const;

/** Losses by the temperature at which the run began, method by method: cold water takes longest to do its work. */
export function lossesByStart(treated: readonly TreatedBatch[], ground: LossGround): StartLoss[] {
  return distinct(treated.map(({ run }) => run.methodId)).flatMap((methodId) => {
    const ofMethod = treated.filter(({ run }) => run.methodId === methodId);
    const row = (own: readonly TreatedBatch[], fromCelsius: number | null, belowCelsius: number | null) =>
      own.length === 0
        ? []
        : [
            {
              methodId,
              fromCelsius,
              belowCelsius,
              runs: distinct(own.map(({ run }) => run.id)).length,
              loss: lossOf(own, ground),
            },
          ];
    return [
      ...bands.flatMap(([from, below]) =>
        row(
          ofMethod.filter(
            ({ run: { startCelsius } }) =>
              startCelsius !== null &&
              startCelsius >= (from ?? Number.NEGATIVE_INFINITY) &&
              startCelsius < (below ?? Number.POSITIVE_INFINITY),
          ),
          from,
          below,
        ),
      ),
      ...row(
        ofMethod.filter(({ run }) => run.startCelsius === null),
        null,
        null,
      ),
    ];
  });
}
