import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type PracticeView, practiceInclude, practiceView } from './practice-view';

export async function getPractice({ db }: ReadContext, id: string): Promise<PracticeView | undefined> {
  const row = await db.adoptedPractice.findFirst({ where: { id }, include: practiceInclude });
  return row ? practiceView(row) : undefined;
}
