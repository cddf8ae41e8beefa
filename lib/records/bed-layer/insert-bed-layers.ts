import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { asDate } from '../fields/stored-date';
import type { BedLayerInput } from './bed-layer.input';

/** Lays layers on top of those that a bed has; `layers` run from the ground up. */
export async function insertBedLayers(
  { db, actor, origin }: WriteContext,
  bed: { readonly id: string; readonly siteId: string; readonly firstLayerId?: string | null },
  laidOn: string,
  layers: readonly BedLayerInput[],
): Promise<void> {
  if (layers.length === 0) return;
  const { _max } = await db.bedLayer.aggregate({ where: { batchId: bed.id }, _max: { position: true } });
  const below = _max.position ?? 0;
  await db.bedLayer.createMany({
    data: layers.map(({ material, thickness, volume }, index) => ({
      networkId: actor.networkId,
      id: (index === 0 ? bed.firstLayerId : null) ?? newId(),
      batchId: bed.id,
      siteId: bed.siteId,
      laidOn: asDate(laidOn),
      position: below + index + 1,
      material,
      thicknessMm: thickness,
      millilitres: volume,
      origin,
      createdById: actor.personId,
    })),
  });
}
