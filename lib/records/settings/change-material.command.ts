import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { changeMaterialInput } from './settings.input';

/** Changes the names and the assumed moisture of a material. What was recorded keeps the moisture it was recorded with. */
export async function changeMaterial(
  { db, actor }: WriteContext,
  input: z.output<typeof changeMaterialInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { id, revision, reason: _reason, ...data } = input;
  const material = await db.material.findFirst({ where: { id, voidedAt: null } });
  if (!material) return notFound;
  const { count } = await db.material.updateMany({ where: { id, revision }, data });
  return count === 1 ? ok({ id }) : { kind: 'conflict', current: material.revision };
}
