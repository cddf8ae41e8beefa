import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { FieldError } from '@/lib/base/result';
import type { LeftOutReason, ShownFigure } from '../shown-figure';
import { singleBatchContamination } from '../single-batch-contamination';
import type { ComparedRow } from './compare';
import { type ComparisonChoices, readComparisonChoices } from './comparison-choices';
import { type ComparisonFilter, completeFilter, parseComparisonQuery } from './comparison-filter.input';
import { dayProblems } from './day-problems';
import { type JudgedBatch, judgeBatches } from './judged-batch';
import { readBatchPage } from './read-batch-page';
import { readComparedRow } from './read-compared-row';
import { readRowPlace, writeRowPlace } from './row-place';
import { scaleOf } from './yield-figure';

/** One batch behind a figure: what it counts for, or why it was left out. */
export type RowBehind = {
  readonly id: string;
  readonly code: string;
  readonly siteId: string;
  readonly method: string;
  readonly inoculatedOn: string;
  readonly units: number;
  readonly contaminated: number | null;
  readonly contaminatedAtAnyTime: number | null;
  /** The batch's own rate by the window's end, with the interval of its units; null where left out, and for beds. */
  readonly rate: ShownFigure | null;
  readonly contaminationLeftOut: LeftOutReason | null;
  readonly freshGrams: number | null;
  /** What the fresh mass is divided by: dry grams, bed area in cm2, or log-days. */
  readonly over: number | null;
  /** In the unit of the figure: BE percent, kg per m2, or g per log and year. */
  readonly yield: number | null;
  readonly yieldLeftOut: LeftOutReason | null;
};

export type RowsBehind = {
  readonly choices: ComparisonChoices;
  readonly filter: ComparisonFilter;
  /** What is wrong with the days asked for; the rows are of those of `filter` all the same. */
  readonly problems: readonly FieldError[];
  /** The figures that these batches are behind. */
  readonly figures: ComparedRow;
  readonly rows: readonly RowBehind[];
  /** How many batches there are in all; `rows` are those of one page. */
  readonly total: number;
  readonly perPage: number;
  /** Places to page on from, as the address writes them; undefined at either end. */
  readonly newer: string | undefined;
  readonly older: string | undefined;
};

const rowsPerPage = 25;

/** The batches behind a figure of the comparison, latest inoculated first; undefined while there is no batch. */
export async function readRowsBehind(
  context: ReadContext,
  query: Record<string, string | string[] | undefined>,
  now: Date,
): Promise<RowsBehind | undefined> {
  const choices = await readComparisonChoices(context, now);
  if (choices.defaults === undefined) return undefined;
  const filter = completeFilter(parseComparisonQuery(query), choices.defaults);
  const asOf = now.toISOString();
  const figures = await readComparedRow(context, filter, choices.today, now);
  const { contamination } = figures;
  // A batch counts for the rate or is left out of it, so both together are all there are.
  const total = contamination.leftOut.reduce((sum, { batches }) => sum + batches, contamination.n.batches);
  const before = readRowPlace(query.before);
  const after = before ? undefined : readRowPlace(query.after);
  const { batches, more } = await readBatchPage(context, filter, rowsPerPage, { after, before });
  const [first, last] = [batches[0], batches.at(-1)];
  const shown = judgeBatches(batches, choices.today);
  const codes = await context.db.batch.findMany({
    where: { id: { in: shown.map(({ facts }) => facts.id) } },
    select: { id: true, code: true },
  });
  const codeOf = new Map(codes.map(({ id, code }) => [id, code]));
  return {
    choices,
    filter,
    problems: dayProblems(query, choices.defaults),
    figures,
    rows: shown.map((batch) => rowBehind(batch, codeOf.get(batch.facts.id) ?? '', asOf)),
    total,
    perPage: rowsPerPage,
    newer: first && (before ? more : after !== undefined) ? writeRowPlace(first) : undefined,
    older: last && (before ? true : more) ? writeRowPlace(last) : undefined,
  };
}

function rowBehind(
  { facts, contamination, yield: given, methodKey }: JudgedBatch,
  code: string,
  asOf: string,
): RowBehind {
  const { id, siteId, inoculatedOn, unitCount, containerKind } = facts;
  const judged = contamination.kind === 'counted' ? contamination : undefined;
  const counted = given.kind === 'counted' ? given : undefined;
  return {
    ...{ id, code, siteId, inoculatedOn, method: methodKey, units: unitCount },
    contaminated: judged?.byWindowEnd ?? null,
    contaminatedAtAnyTime: judged?.atAnyTime ?? null,
    rate:
      judged === undefined || containerKind === 'bed'
        ? null
        : singleBatchContamination({
            contaminatedUnits: judged.byWindowEnd,
            inoculatedUnits: unitCount,
            asOf,
          }),
    contaminationLeftOut: contamination.kind === 'left-out' ? contamination.reason : null,
    freshGrams: counted?.freshGrams ?? null,
    over: counted?.over ?? null,
    yield: counted === undefined ? null : (scaleOf(containerKind).factor * counted.freshGrams) / counted.over,
    yieldLeftOut: given.kind === 'left-out' ? given.reason : null,
  };
}
