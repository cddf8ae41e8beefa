import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type WeighingView, weighingInclude, weighingView } from './weighing-view';

export async function getWeighing({ db }: ReadContext, id: string): Promise<WeighingView | undefined> {
  const row = await db.weighing.findFirst({ where: { id }, include: weighingInclude });
  return row ? weighingView(row) : undefined;
}
