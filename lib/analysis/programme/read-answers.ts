import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { tallyMean } from '@/lib/growing/answer-tally';
import type { Period } from '../production/read-production';
import { grouped } from './grouped';

export type QuestionAnswers = {
  readonly wording: string;
  /** The scale runs from 1 to this; labels say what its ends mean. */
  readonly scaleMost: number;
  readonly leastLabel: string | null;
  readonly mostLabel: string | null;
  readonly trainings: number;
  readonly siteIds: readonly string[];
  /** Answers to each point of the scale, 1 first. */
  readonly before: readonly number[];
  readonly after: readonly number[];
  readonly nBefore: number;
  readonly nAfter: number;
  /** Null without an answer; the change is null when either is. */
  readonly meanBefore: number | null;
  readonly meanAfter: number | null;
  readonly change: number | null;
};

type Row = {
  readonly wording: string;
  readonly scaleMost: number;
  readonly leastLabel: string | null;
  readonly mostLabel: string | null;
  readonly siteId: string;
  readonly before: readonly number[];
  readonly after: readonly number[];
};

/**
 * Answers before and after the trainings of a period, one line for each wording and scale. Answers are kept as counts,
 * so a change is that of the means of everybody who answered and not of the same people: no interval is given.
 */
export async function readAnswers(
  { db, actor }: ReadContext,
  { from, to }: Period,
): Promise<QuestionAnswers[]> {
  const rows = await db.$queryRaw<Row[]>`
    select q.wording, q.scale_most as "scaleMost", q.least_label as "leastLabel", q.most_label as "mostLabel",
      q.site_id::text as "siteId", q.before_counts as before, q.after_counts as after
    from training_question q join training t on t.network_id = q.network_id and t.id = q.training_id
    where q.network_id = ${actor.networkId}::uuid and q.voided_at is null and t.voided_at is null
      and t.held_on between ${from}::date and ${to}::date
    order by t.held_on, q.id`;
  const groups = grouped(rows, (row) => `${row.scaleMost} ${row.wording.trim().toLowerCase()}`);
  return [...groups.values()].flatMap((same) => {
    const [first] = same;
    return first ? [together(first, same)] : [];
  });
}

function together(first: Row, same: readonly Row[]): QuestionAnswers {
  const { wording, scaleMost, leastLabel, mostLabel } = first;
  const sum = (side: 'before' | 'after') =>
    Array.from({ length: scaleMost }, (_, point) =>
      same.reduce((total, row) => total + (row[side][point] ?? 0), 0),
    );
  const before = sum('before');
  const after = sum('after');
  const { n: nBefore, mean: meanBefore } = tallyMean(before);
  const { n: nAfter, mean: meanAfter } = tallyMean(after);
  const change = meanBefore === null || meanAfter === null ? null : meanAfter - meanBefore;
  const siteIds = [...new Set(same.map(({ siteId }) => siteId))];
  return {
    ...{ wording, scaleMost, leastLabel, mostLabel, trainings: same.length, siteIds },
    ...{ before, after, nBefore, nAfter, meanBefore, meanAfter, change },
  };
}
