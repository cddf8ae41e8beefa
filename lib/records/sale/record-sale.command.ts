import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { ok, type Result } from '@/lib/base/result';
import { networkCurrency } from '../programme/network-currency';
import { prepareSale } from './prepare-sale';
import type { recordSaleInput } from './sale.input';

/** Records what a site sold on a day through one kind of outlet: fresh mass and what was paid for it. */
export async function recordSale(
  context: WriteContext,
  input: z.output<typeof recordSaleInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin } = context;
  const id = input.id ?? newId();
  if (await db.sale.findFirst({ where: { id, createdById: actor.personId } })) return ok({ id });
  const prepared = await prepareSale(context, input, await networkCurrency(context));
  if (prepared.kind !== 'ok') return prepared;
  await db.sale.create({
    data: {
      networkId: actor.networkId,
      id,
      siteId: input.siteId,
      ...prepared.value,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id });
}
