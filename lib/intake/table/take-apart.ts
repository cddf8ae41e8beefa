import 'server-only';
import { attempt } from '@/lib/access/attempt';
import type { WriteContext } from '@/lib/access/context';
import type { Failure, Result } from '@/lib/base/result';

/**
 * Takes rows together. What the database refuses of many refuses all of them: then each half is taken for itself, in
 * order and down to single rows, until it is known which rows it was.
 */
export async function takeApart<Row, Answer>(
  context: WriteContext,
  rows: readonly Row[],
  take: (rows: readonly Row[]) => Promise<Result<readonly Answer[]>>,
  refused: (failure: Failure) => Answer,
): Promise<Answer[]> {
  if (rows.length === 0) return [];
  const all = await attempt(context, () => take(rows));
  if (all.kind === 'ok') return [...all.value];
  if (rows.length === 1) return [refused(all)];
  const middle = Math.ceil(rows.length / 2);
  const before = await takeApart(context, rows.slice(0, middle), take, refused);
  return [...before, ...(await takeApart(context, rows.slice(middle), take, refused))];
}
