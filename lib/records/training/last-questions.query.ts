import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** The questions asked last, for the next training to ask the same: only then can they be put together. */
export async function lastQuestions({ db }: ReadContext) {
  const last = await db.trainingQuestion.findFirst({
    where: { voidedAt: null, training: { voidedAt: null } },
    orderBy: { id: 'desc' },
    select: { trainingId: true },
  });
  if (!last) return [];
  return db.trainingQuestion.findMany({
    where: { trainingId: last.trainingId, voidedAt: null },
    orderBy: { id: 'asc' },
    select: { wording: true, scaleMost: true, leastLabel: true, mostLabel: true },
  });
}
