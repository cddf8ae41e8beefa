import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { changeSuitabilityInput } from './settings.input';

/** Changes whether two of species, material and method suit each other in this network, and the reason shown. */
export async function changeSuitability(
  { db, actor }: WriteContext,
  input: z.output<typeof changeSuitabilityInput>,
): Promise<Result<{ id: string; speciesId: string | null }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { id, revision, reason: _reason, ...data } = input;
  const row = await db.suitability.findFirst({ where: { id, voidedAt: null } });
  if (!row) return notFound;
  const { count } = await db.suitability.updateMany({ where: { id, revision, voidedAt: null }, data });
  return count === 1 ? ok({ id, speciesId: row.speciesId }) : { kind: 'conflict', current: row.revision };
}
