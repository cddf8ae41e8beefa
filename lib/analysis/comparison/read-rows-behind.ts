import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { LeftOutReason } from '../shown-figure';
import { type ComparisonChoices, readComparisonChoices } from './comparison-choices';
import { type ComparisonFilter, completeFilter, parseComparisonQuery } from './comparison-filter.input';
import { judgeBatches } from './judged-batch';
import { readBatchRows } from './read-batch-rows';

/** One batch behind a figure: what it counts for, or why it was left out. */
export type RowBehind = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly method: string;
  readonly inoculatedOn: string;
  readonly units: number;
  readonly contaminated: number | null;
  readonly contaminationLeftOut: LeftOutReason | null;
  readonly freshGrams: number | null;
  readonly over: number | null;
  readonly yieldLeftOut: LeftOutReason | null;
};

export type RowsBehind = {
  readonly choices: ComparisonChoices;
  readonly filter: ComparisonFilter;
  readonly rows: readonly RowBehind[];
  /** How many batches there are in all; the list stops at `mostRows`. */
  readonly total: number;
};

export const mostRows = 500;

/** The batches behind a figure of the comparison, latest inoculated first. */
export async function readRowsBehind(
  context: ReadContext,
  query: Record<string, string | string[] | undefined>,
  now: Date,
): Promise<RowsBehind | undefined> {
  const choices = await readComparisonChoices(context, now);
  if (choices.defaults === undefined) return undefined;
  const filter = completeFilter(parseComparisonQuery(query), choices.defaults);
  const judged = judgeBatches(await readBatchRows(context, filter), choices.today)
    .filter(
      (batch) =>
        (filter.method === undefined || batch.methodKey === filter.method) &&
        (filter.site === undefined || batch.facts.siteId === filter.site),
    )
    .sort(
      (a, b) =>
        b.facts.inoculatedOn.localeCompare(a.facts.inoculatedOn) || a.facts.id.localeCompare(b.facts.id),
    );
  const shown = judged.slice(0, mostRows);
  const codes = await context.db.batch.findMany({
    where: { id: { in: shown.map(({ facts }) => facts.id) } },
    select: { id: true, code: true },
  });
  const codeOf = new Map(codes.map(({ id, code }) => [id, code]));
  const rows = shown.map(({ facts, contamination, yield: given, methodKey }) => ({
    id: facts.id,
    code: codeOf.get(facts.id) ?? '',
    siteId: facts.siteId,
    method: methodKey,
    inoculatedOn: facts.inoculatedOn,
    units: facts.unitCount,
    contaminated: contamination.kind === 'counted' ? contamination.byWindowEnd : null,
    contaminationLeftOut: contamination.kind === 'left-out' ? contamination.reason : null,
    freshGrams: given.kind === 'counted' ? given.freshGrams : null,
    over: given.kind === 'counted' ? given.over : null,
    yieldLeftOut: given.kind === 'left-out' ? given.reason : null,
  }));
  return { choices, filter, rows, total: judged.length };
}
