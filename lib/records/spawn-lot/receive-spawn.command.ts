import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { asCalendarDate, asDate } from '../fields/stored-date';
import type { receiveSpawnInput } from './spawn-lot.input';

/** Records that part of a spawn lot came to a site. */
export async function receiveSpawn(
  { db, actor, origin }: WriteContext,
  input: z.output<typeof receiveSpawnInput>,
): Promise<Result<{ id: string; spawnLotId: string }>> {
  const { spawnLotId, siteId } = input;
  const id = input.id ?? newId();
  if (await db.spawnReceipt.findFirst({ where: { id, createdById: actor.personId } }))
    return ok({ id, spawnLotId });
  const lot = await db.spawnLot.findFirst({ where: { id: spawnLotId, voidedAt: null } });
  const site = await db.site.findFirst({ where: { id: siteId, voidedAt: null } });
  if (!lot || !site) return notFound;
  const earliest = lot.madeOn ?? lot.receivedOn;
  if (earliest !== null && input.receivedOn < asCalendarDate(earliest)) {
    return invalid('receivedOn', 'before', { date: asCalendarDate(earliest) });
  }
  await db.spawnReceipt.create({
    data: {
      networkId: actor.networkId,
      id,
      spawnLotId,
      siteId,
      receivedOn: asDate(input.receivedOn),
      grams: input.mass,
      note: input.note,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, spawnLotId });
}
