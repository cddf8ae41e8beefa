import { isId } from '@/lib/records/fields/id-field';
import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { type BatchPage, getBatch } from '@/lib/records/batch/get-batch.query';

export type ReadBatch = { readonly actor: Actor; readonly page: BatchPage };

/** The batch that an address names, for whoever works with batches; undefined when it is not there or voided. */
export async function readBatch(params: Promise<{ id: string }>): Promise<ReadBatch | undefined> {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  if (!isId(id)) return undefined;
  const page = await readAs(actor, (context) => getBatch(context, id, new Date()));
  return page && page.batch.voidReason === null ? { actor, page } : undefined;
}
