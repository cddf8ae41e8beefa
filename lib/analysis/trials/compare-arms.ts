import { adjustPValues } from '@/lib/stats/multiplicity/adjust-p-values';
import { answerRequest } from '../fitting/answer-request';
import type { FigureMethod, FigureParts, LeftOut, ShownFigure } from '../shown-figure';
import { fewBatches, shownLevel } from '../shown-figure';
import type { ArmContrast, TrialComparison } from './trial-answer';
import type { TrialData, TrialRun } from './trial-run';

const method: FigureMethod = {
  code: 'run-values',
  source:
    'Hayes & Moulton (2017), Cluster Randomised Trials, 2nd edition: one value for each cluster, strata as fixed effects, t limits; several arms by Holm (1979), Scandinavian Journal of Statistics 6:65-70 (citations from memory)',
  clusteredBy: 'treatment-run',
};

/** Looked at together with the other arms, an arm differs from the first one when its adjusted value is at most this. */
const significance = 0.05;

type Counted = TrialRun & { readonly outcome: { readonly kind: 'counted' } };
type Value = { readonly armId: string; readonly siteId: string; readonly percent: number };

function isCounted(run: TrialRun): run is Counted {
  return run.outcome.kind === 'counted';
}

/** Batches of one arm that were treated in one load are one value. */
function valuesOf(runs: readonly Counted[]): Value[] {
  const loads = new Map<string, Counted[]>();
  for (const run of runs) {
    const key = `${run.armId} ${run.siteId} ${run.load}`;
    loads.set(key, [...(loads.get(key) ?? []), run]);
  }
  return [...loads.values()].flatMap((own) => {
    const [first] = own;
    if (first === undefined) return [];
    const above = own.reduce((sum, { outcome }) => sum + outcome.numerator, 0);
    const below = own.reduce((sum, { outcome }) => sum + outcome.denominator, 0);
    return [{ armId: first.armId, siteId: first.siteId, percent: (100 * above) / below }];
  });
}

function leftOutOf(runs: readonly TrialRun[]): LeftOut[] {
  const sums = new Map<LeftOut['reason'], LeftOut>();
  for (const { outcome, units } of runs) {
    if (outcome.kind !== 'left-out') continue;
    const sum = sums.get(outcome.reason);
    sums.set(outcome.reason, {
      reason: outcome.reason,
      batches: (sum?.batches ?? 0) + 1,
      units: (sum?.units ?? 0) + units,
    });
  }
  return [...sums.values()].sort((a, b) => a.reason.localeCompare(b.reason));
}

/**
 * Arms compared as planned: each treatment run gives one percentage, a linear model has arm and site, differences from the
 * first arm have t limits on the degrees of freedom that are left. Exact for alike runs of like variance; the order of the
 * runs does not matter.
 */
export function compareArms(data: TrialData, runs: readonly TrialRun[], asOf: string): TrialComparison {
  const counted = runs.filter(isCounted).toSorted((a, b) => (a.slotId < b.slotId ? -1 : 1));
  const values = valuesOf(counted);
  const { outcome, arms } = data;
  const [reference] = arms;
  const sites = new Set(values.map(({ siteId }) => siteId));
  const compared = arms.filter(({ id }) => values.some(({ armId }) => armId === id));
  const answer =
    compared.length < 2
      ? undefined
      : answerRequest({
          kind: 'linear',
          input: {
            response: values.map(({ percent }) => percent),
            fixed: [
              {
                kind: 'factor',
                name: 'arm',
                values: values.map(({ armId }) => armId),
                levels: compared.map(({ id }) => id),
              },
              ...(sites.size < 2
                ? []
                : [{ kind: 'factor' as const, name: 'site', values: values.map(({ siteId }) => siteId) }]),
            ],
            random: [],
          },
          meansOf: ['arm'],
        });
  const fitted = answer?.kind === 'answer' ? answer.means.arm : undefined;
  const about = (of: readonly string[]) => {
    const own = counted.filter(({ armId }) => of.includes(armId));
    return {
      n: {
        batches: own.length,
        units: own.reduce((sum, { units }) => sum + units, 0),
        runs: new Set(own.map(({ load }) => load)).size,
        sites: new Set(own.map(({ siteId }) => siteId)).size,
      },
      parts: {
        numerator: own.reduce((sum, run) => sum + run.outcome.numerator, 0),
        denominator: own.reduce((sum, run) => sum + run.outcome.denominator, 0),
        unit: outcome === 'contamination' ? 'units' : 'grams',
      } satisfies FigureParts,
      method,
      marks: own.length < fewBatches ? (['few-batches'] as const) : [],
      leftOut: leftOutOf(runs.filter(({ armId }) => of.includes(armId))),
      asOf,
      rowsQuery: '',
    };
  };
  const cannot = (unit: 'percent' | 'points', of: readonly string[]): ShownFigure => {
    const { parts: _parts, ...rest } = about(of);
    return { ...rest, unit, kind: 'cannot', reason: rest.n.batches === 0 ? 'no-batches' : 'not-enough-data' };
  };
  const pairs = arms.slice(1).map(({ id }) => {
    const pair = fitted?.pairs.find(
      ({ first, second }) =>
        [first, second].includes(id) && reference !== undefined && [first, second].includes(reference.id),
    );
    return { id, pair: pair?.kind === 'estimate' ? pair : undefined };
  });
  const adjusted = adjustPValues(
    pairs.map(({ pair }) => pair?.pValue ?? null),
    'holm',
  );
  return {
    arms: arms.map(({ id }) => {
      const own = runs.filter(({ armId }) => armId === id);
      const mean = fitted?.means.find(({ level }) => level === id);
      const counts = {
        armId: id,
        planned: data.runs.filter(({ armId }) => armId === id).length,
        made: own.filter(({ made }) => made).length,
        counted: counted.filter(({ armId }) => armId === id).length,
      };
      if (mean?.kind !== 'estimate') return { ...counts, figure: cannot('percent', [id]) };
      const { low, high } = mean.interval;
      return {
        ...counts,
        figure: {
          ...about([id]),
          unit: 'percent',
          kind: 'figure',
          value: Math.max(0, mean.estimate),
          interval: {
            kind: 'interval',
            low: Math.max(0, low),
            high: outcome === 'contamination' ? Math.min(100, high) : high,
            level: shownLevel,
            method: 't',
          },
        },
      };
    }),
    contrasts: pairs.map(({ id, pair }, index): ArmContrast => {
      const both = [reference?.id ?? '', id];
      const pValue = adjusted[index] ?? null;
      if (pair === undefined)
        return { armId: id, points: cannot('points', both), pValue, verdict: 'cannot-tell' };
      const sign = pair.first === id ? 1 : -1;
      const ends = [sign * pair.interval.low, sign * pair.interval.high];
      const [low, high] = [Math.min(...ends), Math.max(...ends)];
      const value = sign * pair.estimate;
      const tells = pValue !== null && pValue <= significance && (low > 0 || high < 0);
      return {
        armId: id,
        points: {
          ...about(both),
          unit: 'points',
          kind: 'figure',
          value,
          interval: { kind: 'interval', low, high, level: shownLevel, method: 't' },
        },
        pValue,
        verdict: !tells ? 'cannot-tell' : value > 0 ? 'more' : 'fewer',
      };
    }),
  };
}
