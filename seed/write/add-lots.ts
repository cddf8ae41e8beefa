import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { addDays } from '@/lib/growing/calendar-date';
import { listChoices, type NetworkChoices } from '@/lib/records/network/list-choices.query';
import { addSpawnLot } from '@/lib/records/spawn-lot/add-spawn-lot.command';
import { addSpawnLotInput } from '@/lib/records/spawn-lot/spawn-lot.input';
import { addSubstrateLot } from '@/lib/records/substrate-lot/add-substrate-lot.command';
import { addSubstrateLotInput } from '@/lib/records/substrate-lot/substrate-lot.input';
import type { PlannedSpawnLot } from '../plan/plan-spawn-lots';
import { inOneGo } from './in-one-go';

/** Ids by the codes that the plan uses. */
export type LotBook = {
  readonly choices: NetworkChoices;
  readonly spawnByCode: ReadonlyMap<string, string>;
  /** Lots of a material in the order received, to take the latest before a day. */
  readonly substrateByMaterial: ReadonlyMap<
    string,
    readonly { readonly id: string; readonly receivedOn: string }[]
  >;
};

const substrateSources: Readonly<Record<string, string>> = {
  wheat_straw: 'Elder Bank Farm',
  coffee_grounds: 'Lantern Street cafés',
  corn_stalks: 'Quarry Farm',
  corn_cobs: 'Quarry Farm',
  hardwood_sawdust: 'Hollin sawmill',
  hardwood_chips: 'Larkmoor tree crew',
  hardwood_log: 'Fernhollow Woodlot',
};

export async function addLots(
  coordinator: Actor,
  lots: readonly PlannedSpawnLot[],
  start: string,
  days: number,
): Promise<LotBook> {
  const choices = await readAs(coordinator, listChoices);
  const idOf = (rows: readonly { code: string; id: string }[], code: string) => {
    const row = rows.find((one) => one.code === code);
    if (!row) throw new Error(`the defaults have no ${code}`);
    return row.id;
  };
  const spawnByCode = new Map<string, string>();
  const substrateByMaterial = new Map<string, { id: string; receivedOn: string }[]>();
  await inOneGo(coordinator, async (take) => {
    for (const lot of lots) {
      const { id } = await take(addSpawnLotInput, addSpawnLot, {
        code: lot.code,
        speciesId: idOf(choices.species, lot.speciesCode),
        form: lot.speciesCode === 'lentinula_edodes' ? 'plug' : 'grain',
        maker: lot.maker,
        madeOn: lot.madeOn,
        receivedOn: addDays(lot.madeOn, 5),
        received: 60_000,
        parentLotId: lot.parentCode === null ? '' : spawnByCode.get(lot.parentCode),
        cultureName: lot.parentCode === null ? `${lot.code.split('-')[1]} mother culture` : '',
      });
      spawnByCode.set(lot.code, id);
    }
  });
  await inOneGo(coordinator, async (take) => {
    for (const [materialCode, sourceName] of Object.entries(substrateSources)) {
      const received: { id: string; receivedOn: string }[] = [];
      for (let number = 0; number * 120 < days; number += 1) {
        const receivedOn = addDays(start, number * 120 - 30);
        const { id } = await take(addSubstrateLotInput, addSubstrateLot, {
          code: `M-${materialCode.slice(0, 5).replace('_', '').toUpperCase()}${materialCode.includes('cob') ? 'C' : ''}${materialCode.includes('log') ? 'L' : ''}${materialCode.includes('dust') ? 'S' : ''}-${number + 1}`,
          materialId: idOf(choices.materials, materialCode),
          sourceName,
          receivedOn,
          received: 800_000,
          moistureSource: materialCode === 'wheat_straw' && number % 2 === 0 ? 'measured' : 'none',
          moisturePercent: materialCode === 'wheat_straw' && number % 2 === 0 ? 12 : '',
          cutLength: materialCode === 'wheat_straw' ? 50 : '',
        });
        received.push({ id, receivedOn });
      }
      substrateByMaterial.set(materialCode, received);
    }
  });
  return { choices, spawnByCode, substrateByMaterial };
}
