import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asDate } from '../fields/stored-date';
import type { addSpawnLotInput } from './spawn-lot.input';

type Fields = Omit<z.output<typeof addSpawnLotInput>, 'id' | 'code'>;

/**
 * The columns of a spawn lot. Generation: 1 when made straight from a named culture, one more than the parent
 * lot's otherwise; unknown (null) when neither is named or the parent's is unknown.
 */
export async function prepareSpawnLot({ db, actor, now }: WriteContext, input: Fields, own: string) {
  const species = await db.species.findFirst({ where: { id: input.speciesId, voidedAt: null } });
  if (!species) return notFound;
  const today = todayInZone(actor.networkTimeZone, now);
  if (input.madeOn !== null && input.madeOn > today) return invalid('madeOn', 'future-date');
  if (input.receivedOn !== null && input.receivedOn > today) return invalid('receivedOn', 'future-date');
  if (input.madeOn !== null && input.receivedOn !== null && input.receivedOn < input.madeOn) {
    return invalid('receivedOn', 'before', { date: input.madeOn });
  }
  let generation = input.cultureName === null ? null : 1;
  if (input.parentLotId !== null) {
    const parent = await db.spawnLot.findFirst({ where: { id: input.parentLotId, voidedAt: null } });
    if (!parent || parent.id === own) return invalid('parentLotId', 'not-an-option');
    if (parent.speciesId !== input.speciesId) return invalid('parentLotId', 'other-species');
    generation = parent.generation === null ? null : parent.generation + 1;
  }
  const columns = {
    speciesId: input.speciesId,
    strain: input.strain,
    form: input.form,
    maker: input.maker,
    makerCode: input.makerCode,
    madeOn: input.madeOn === null ? null : asDate(input.madeOn),
    receivedOn: input.receivedOn === null ? null : asDate(input.receivedOn),
    receivedGrams: input.received,
    parentLotId: input.parentLotId,
    cultureName: input.cultureName,
    generation,
    note: input.note,
  };
  const answer: Result<typeof columns> = ok(columns);
  return answer;
}
