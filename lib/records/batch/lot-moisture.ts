import type { Material, SubstrateLot } from '@/lib/database/generated/client';
import type { KnownMoisture } from '@/lib/growing/batch-dry-mass';

/** Moisture of a lot as it came: its own, else its material's default, which is an assumption. */
export function lotMoisture(lot: SubstrateLot & { material: Material }): KnownMoisture {
  if (lot.moisturePercent !== null)
    return { percent: lot.moisturePercent.toNumber(), source: lot.moistureSource };
  const usual = lot.material.receivedMoisturePercent;
  return usual === null
    ? { percent: null, source: 'none' }
    : { percent: usual.toNumber(), source: 'assumed' };
}
