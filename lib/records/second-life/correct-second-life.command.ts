import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { correctBatch } from '../batch/correct-batch.command';
import { checkSources } from './check-sources';
import { linkSources } from './link-sources';
import type { correctSecondLifeInput } from './second-life.input';

/** Corrects a second life, the units it was given included. */
export async function correctSecondLife(
  context: WriteContext,
  input: z.output<typeof correctSecondLifeInput>,
): Promise<Result<{ id: string }>> {
  const { db, now } = context;
  const { id, reason, sources: _sources, way, ...batch } = input;
  const before = await db.batch.findFirst({ where: { id, secondLife: true, voidedAt: null } });
  if (!before) return notFound;
  const sources = await checkSources(context, input, id);
  if (sources.kind !== 'ok') return sources;
  const corrected = await correctBatch(context, { id, reason, ...batch }, 'second');
  if (corrected.kind !== 'ok') return corrected;
  if (way !== before.secondLifeWay)
    await db.batch.updateMany({ where: { id }, data: { secondLifeWay: way } });
  await db.secondLifeSource.updateMany({
    where: { batchId: id, voidedAt: null },
    data: { voidedAt: now, voidReason: reason },
  });
  await linkSources(context, { id, siteId: input.siteId }, sources.value);
  return ok({ id });
}
