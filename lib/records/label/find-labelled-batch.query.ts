import 'server-only';
import type { ReadContext } from '@/lib/access/context';

/** The batch that a printed code leads to; undefined when it is not there or not the actor's to see. */
export async function findLabelledBatch({ db }: ReadContext, key: string): Promise<string | undefined> {
  const batch = await db.batch.findFirst({ where: { labelKey: key.toLowerCase() }, select: { id: true } });
  return batch?.id;
}
