import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { prepareSale } from './prepare-sale';
import type { correctSaleInput } from './sale.input';

/** Puts a sale right; it stays in the currency in which it was recorded. */
export async function correctSale(
  context: WriteContext,
  input: z.output<typeof correctSaleInput>,
): Promise<Result<{ id: string }>> {
  const { db } = context;
  const { id, revision } = input;
  const existing = await db.sale.findFirst({ where: { id, voidedAt: null } });
  if (!existing) return notFound;
  const { siteId, currency } = existing;
  const prepared = await prepareSale(context, { ...input, siteId }, currency);
  if (prepared.kind !== 'ok') return prepared;
  const { count } = await db.sale.updateMany({
    where: { id, revision, voidedAt: null },
    data: prepared.value,
  });
  return count === 1 ? ok({ id }) : { kind: 'conflict', current: existing.revision };
}
