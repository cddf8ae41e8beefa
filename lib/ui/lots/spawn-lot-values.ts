import type { SpawnLotView } from '@/lib/records/spawn-lot/spawn-lot-view';
import { dateValues } from '../form/date-values';
import { type MassReader, massValues } from '../form/mass-units';

/** What the form of a correction starts from. */
export function spawnLotValues(lot: SpawnLotView, reader: MassReader): Record<string, string> {
  return {
    id: lot.id,
    revision: String(lot.revision),
    code: lot.code,
    speciesId: lot.speciesId,
    strain: lot.strain ?? '',
    form: lot.form,
    maker: lot.maker ?? '',
    makerCode: lot.makerCode ?? '',
    parentLotId: lot.parent?.id ?? '',
    cultureName: lot.cultureName ?? '',
    note: lot.note ?? '',
    ...dateValues('madeOn', lot.madeOn),
    ...dateValues('receivedOn', lot.receivedOn),
    ...massValues('received', lot.receivedGrams, reader),
  };
}
