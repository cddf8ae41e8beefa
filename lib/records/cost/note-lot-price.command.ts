import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { minorOf, networkCurrency } from '../programme/network-currency';
import type { noteLotPriceInput } from './cost.input';

/** Writes down what was paid for so much of a lot, or changes it. 0 says that it was given. */
export async function noteLotPrice(
  context: WriteContext,
  input: z.output<typeof noteLotPriceInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin } = context;
  const { of, about, revision, paid, mass, reason } = input;
  const id = input.id ?? newId();
  const where = { id: about, voidedAt: null };
  const lot =
    of === 'substrate-lot'
      ? await db.substrateLot.findFirst({ where })
      : await db.spawnLot.findFirst({ where });
  if (!lot) return notFound;
  const link = of === 'substrate-lot' ? { substrateLotId: about } : { spawnLotId: about };
  const existing = await db.lotPrice.findFirst({ where: { ...link, voidedAt: null } });
  if (existing?.id === input.id && existing?.createdById === actor.personId && revision === null)
    return ok({ id });
  const currency = existing?.currency ?? (await networkCurrency(context));
  const minor = minorOf('paid', paid, currency);
  if (minor.kind !== 'ok') return minor;
  const data = { paidMinor: minor.value, forGrams: mass };
  if (existing) {
    if (revision !== null && reason === null) return invalid('reason', 'missing');
    if (actor.role !== 'coordinator' && existing.createdById !== actor.personId) return notFound;
    const { count } = await db.lotPrice.updateMany({
      where: { id: existing.id, revision: revision ?? 0, voidedAt: null },
      data,
    });
    return count === 1 ? ok({ id: existing.id }) : { kind: 'conflict', current: existing.revision };
  }
  const { networkId, personId: createdById } = actor;
  await db.lotPrice.create({ data: { networkId, id, ...link, ...data, currency, origin, createdById } });
  return ok({ id });
}
