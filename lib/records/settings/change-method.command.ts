import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { changeMethodInput } from './settings.input';

/** Changes the names and the window of a method for this network. */
export async function changeMethod(
  { db, actor }: WriteContext,
  input: z.output<typeof changeMethodInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { id, revision, reason: _reason, ...data } = input;
  const method = await db.method.findFirst({ where: { id, voidedAt: null } });
  if (!method) return notFound;
  if (data.minCelsius !== null && data.maxCelsius !== null && data.maxCelsius < data.minCelsius) {
    return invalid('maxCelsius', 'too-small', { min: `${data.minCelsius} °C` });
  }
  if (data.minMinutes !== null && data.maxMinutes !== null && data.maxMinutes < data.minMinutes) {
    return invalid('maxMinutes', 'too-small', { min: data.minMinutes });
  }
  const { count } = await db.method.updateMany({ where: { id, revision }, data });
  return count === 1 ? ok({ id }) : { kind: 'conflict', current: method.revision };
}
