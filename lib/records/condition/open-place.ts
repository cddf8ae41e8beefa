import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** A place that the actor may see and that is not voided, with its site. */
export async function openPlace({ db }: ReadContext, id: string) {
  const place = await db.conditionPlace.findFirst({ where: { id, voidedAt: null }, include: { site: true } });
  return place ?? undefined;
}
