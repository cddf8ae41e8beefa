import 'server-only';
import type { z } from 'zod';
import type { ReadContext, WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { SpawnLot } from '@/lib/database/generated/client';
import { todayInZone } from '@/lib/growing/calendar-date';
import { asDate } from '../fields/stored-date';
import type { addSpawnLotInput } from './spawn-lot.input';

type Fields = Omit<z.output<typeof addSpawnLotInput>, 'id' | 'code'>;

type Known = {
  readonly species: ReadonlySet<string>;
  readonly parents: ReadonlyMap<string, SpawnLot>;
};

/** Species and parent lots that spawn lots name, as far as the actor may see them and they are not voided. */
export async function spawnLookups({ db }: ReadContext, inputs: readonly Fields[]): Promise<Known> {
  const speciesIds = [...new Set(inputs.map(({ speciesId }) => speciesId))];
  const parentIds = [...new Set(inputs.flatMap(({ parentLotId }) => parentLotId ?? []))];
  const species = await db.species.findMany({
    where: { id: { in: speciesIds }, voidedAt: null },
    select: { id: true },
  });
  const parents =
    parentIds.length === 0
      ? []
      : await db.spawnLot.findMany({ where: { id: { in: parentIds }, voidedAt: null } });
  return {
    species: new Set(species.map(({ id }) => id)),
    parents: new Map(parents.map((row) => [row.id, row])),
  };
}

export async function prepareSpawnLot(context: WriteContext, input: Fields, own: string) {
  return judgeSpawnLot(context, input, own, await spawnLookups(context, [input]));
}

/**
 * The columns of a spawn lot. Generation: 1 when made straight from a named culture, one more than the parent
 * lot's otherwise; unknown (null) when neither is named or the parent's is unknown.
 */
export function judgeSpawnLot(
  { actor, now }: Pick<WriteContext, 'actor' | 'now'>,
  input: Fields,
  own: string,
  { species, parents }: Known,
) {
  if (!species.has(input.speciesId)) return notFound;
  const today = todayInZone(actor.networkTimeZone, now);
  if (input.madeOn !== null && input.madeOn > today) return invalid('madeOn', 'future-date');
  if (input.receivedOn !== null && input.receivedOn > today) return invalid('receivedOn', 'future-date');
  if (input.madeOn !== null && input.receivedOn !== null && input.receivedOn < input.madeOn) {
    return invalid('receivedOn', 'before', { date: input.madeOn });
  }
  let generation = input.cultureName === null ? null : 1;
  if (input.parentLotId !== null) {
    const parent = parents.get(input.parentLotId);
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
