import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { changeSpeciesInput } from './settings.input';

/** Changes the names of a species for this network. */
export async function changeSpecies(
  { db, actor }: WriteContext,
  input: z.output<typeof changeSpeciesInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { id, revision, reason: _reason, ...data } = input;
  const species = await db.species.findFirst({ where: { id, voidedAt: null } });
  if (!species) return notFound;
  const { count } = await db.species.updateMany({
    where: { id, revision },
    data,
  });
  return count === 1 ? ok({ id }) : { kind: 'conflict', current: species.revision };
}
