import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { amountsBySite, type FigureBySite } from '../production/by-site-amounts';
import type { Period } from '../production/read-harvest';
import { together } from './comparison-filter.input';
import { contaminationFigure, type FigureAsk } from './contamination-figure';
import { type JudgedBatch, judgeBatches } from './judged-batch';
import { readBatchRows } from './read-batch-rows';
import { yieldFigure } from './yield-figure';

/** A method within one species and one container kind; those two are never pooled. */
export type MethodFigures = {
  readonly species: string;
  readonly container: ContainerKind;
  /** Method id, `mixed`, `second-life` or `none`. */
  readonly method: string;
  /** By site: inoculated units. */
  readonly contamination: FigureBySite;
  /** By site: dry grams (bed: cm2, logs: log-days). */
  readonly yield: FigureBySite;
};

/**
 * Contamination and yield of every method over a period, by date of inoculation (both days included), all sites
 * together and materials pooled, with intervals that cluster by site. Sorted by species, container and method ids.
 */
export async function readByMethod(
  context: ReadContext,
  period: Period,
  now: Date,
): Promise<readonly MethodFigures[]> {
  const sites = await context.db.site.findMany({ select: { id: true, timeZone: true } });
  const today = new Map(sites.map(({ id, timeZone }) => [id, todayInZone(timeZone, now)]));
  const judged = judgeBatches(await readBatchRows(context, { ...period, material: together }), today);
  const groups = new Map<string, JudgedBatch[]>();
  for (const batch of judged) {
    const key = [batch.facts.speciesId, batch.facts.containerKind, batch.methodKey].join(' ');
    const group = groups.get(key);
    if (group) group.push(batch);
    else groups.set(key, [batch]);
  }
  return [...groups]
    .sort(([a], [b]) => a.localeCompare(b))
    .flatMap(([, batches]) => methodFigures(batches, now));
}

function methodFigures(batches: readonly JudgedBatch[], now: Date): MethodFigures[] {
  const [first] = batches;
  if (first === undefined) return [];
  const ask: FigureAsk = {
    batches,
    clusterBy: 'site',
    pooled: { species: false, materials: true },
    asOf: now.toISOString(),
    rowsQuery: '',
  };
  const { speciesId, containerKind } = first.facts;
  const shares = (amountOf: (batch: JudgedBatch) => number) =>
    amountsBySite(batches.map((batch) => ({ siteId: batch.facts.siteId, amount: amountOf(batch) })));
  return [
    {
      species: speciesId,
      container: containerKind,
      method: first.methodKey,
      contamination: {
        figure: contaminationFigure(ask, 'window'),
        bySite: shares(({ contamination }) => (contamination.kind === 'counted' ? contamination.units : 0)),
      },
      yield: {
        figure: yieldFigure(ask, containerKind, 'all'),
        bySite: shares((batch) => (batch.yield.kind === 'counted' ? batch.yield.over : 0)),
      },
    },
  ];
}
