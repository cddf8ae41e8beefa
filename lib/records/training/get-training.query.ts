import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type TrainingView, trainingInclude, trainingView } from './training-view';

export async function getTraining({ db }: ReadContext, id: string): Promise<TrainingView | undefined> {
  const row = await db.training.findFirst({ where: { id }, include: trainingInclude });
  return row ? trainingView(row) : undefined;
}
