import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { colleagueNames } from '../batch/colleague-names';

/** Who changed a record last and when, as far as the actor may know; undefined where its history is not theirs to see. */
export async function lastChange(
  context: ReadContext,
  recordId: string,
): Promise<{ readonly by: string | null; readonly at: string } | undefined> {
  const row = await context.db.history.findFirst({
    where: { recordId },
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    select: { at: true, personId: true },
  });
  if (!row) return undefined;
  const names = await colleagueNames(context, [row.personId]);
  return { by: row.personId === null ? null : (names[row.personId] ?? null), at: row.at.toISOString() };
}
