import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { trialStateOf } from './trial-state';

/** Trials that the reader may see, latest first, with how many runs of the list are filled at the sites they see. */
export async function listTrials({ db }: ReadContext) {
  const rows = await db.trial.findMany({
    where: { voidedAt: null },
    include: { result: { select: { id: true } }, slots: { select: { batchId: true } } },
    orderBy: { id: 'desc' },
  });
  return rows.map((row) => ({
    id: row.id,
    title: row.title,
    question: row.question,
    state: trialStateOf(row),
    planned: row.slots.length,
    recruited: row.slots.filter(({ batchId }) => batchId !== null).length,
  }));
}
