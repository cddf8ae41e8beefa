import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { asCalendarDate, asDate } from '../fields/stored-date';
import type { receiveSubstrateInput } from './substrate-lot.input';

/** Records that part of a lot came to a site. */
export async function receiveSubstrate(
  { db, actor, origin }: WriteContext,
  input: z.output<typeof receiveSubstrateInput>,
): Promise<Result<{ id: string; substrateLotId: string }>> {
  const { substrateLotId, siteId } = input;
  const id = input.id ?? newId();
  if (await db.substrateReceipt.findFirst({ where: { id, createdById: actor.personId } }))
    return ok({ id, substrateLotId });
  const lot = await db.substrateLot.findFirst({ where: { id: substrateLotId, voidedAt: null } });
  const site = await db.site.findFirst({ where: { id: siteId, voidedAt: null } });
  if (!lot || !site) return notFound;
  const lotDate = asCalendarDate(lot.receivedOn);
  if (input.receivedOn < lotDate) return invalid('receivedOn', 'before', { date: lotDate });
  await db.substrateReceipt.create({
    data: {
      networkId: actor.networkId,
      id,
      substrateLotId,
      siteId,
      receivedOn: asDate(input.receivedOn),
      grams: input.mass,
      note: input.note,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, substrateLotId });
}
