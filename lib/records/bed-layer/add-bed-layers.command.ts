import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { checkEventDate } from '../batch/check-event-date';
import { lockBatch } from '../batch/lock-batch';
import { openBatch } from '../batch/open-batch';
import type { addBedLayersInput } from './bed-layer.input';
import { checkBedLayers } from './check-bed-layers';
import { insertBedLayers } from './insert-bed-layers';

/** Writes down layers of a bed: those it was made of, or fresh chips and straw laid on top later. */
export async function addBedLayers(
  context: WriteContext,
  { id, batchId, laidOn, layers }: z.output<typeof addBedLayersInput>,
): Promise<Result<{ batchId: string }>> {
  if (id !== null) {
    const repeat = await context.db.bedLayer.findFirst({
      where: { id, createdById: context.actor.personId },
    });
    if (repeat) return ok({ batchId: repeat.batchId });
  }
  await lockBatch(context, batchId);
  const bed = await openBatch(context, batchId);
  if (!bed) return notFound;
  if (bed.containerKind !== 'bed') return invalid('', 'only-beds-have-layers');
  if (layers.length === 0) return invalid('layers.0.material', 'missing-choice');
  const wrongDate = checkEventDate('laidOn', laidOn, bed, context.now);
  if (wrongDate) return wrongDate;
  const errors = checkBedLayers(layers);
  if (errors.length > 0) return { kind: 'invalid', errors };
  await insertBedLayers(context, { id: bed.id, siteId: bed.siteId, firstLayerId: id }, laidOn, layers);
  return ok({ batchId });
}
