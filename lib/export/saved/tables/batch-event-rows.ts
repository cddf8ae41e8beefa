import type { Prisma } from '@/lib/database/generated/client';
import { batchFilterInput } from '@/lib/records/batch/batch-filter.input';
import { batchWhere } from '@/lib/records/batch/batch-where';
import type { SavedQuery } from '../saved-table';

/** What every line about a batch names: its batch and site. */
export const ofBatch = { batch: { include: { site: true } } } as const;

export type OfBatch = { readonly batch: { readonly code: string; readonly site: { readonly name: string } } };

/** What hangs on the batches that a filter of the list of batches lets through; voided ones with voided batches. */
export function eventWhere(query: SavedQuery): {
  batch: Prisma.BatchWhereInput;
  voidedAt?: null;
} {
  const filter = batchFilterInput.parse(query);
  return { batch: batchWhere(filter), ...(filter.voided === 'yes' ? {} : { voidedAt: null }) };
}
