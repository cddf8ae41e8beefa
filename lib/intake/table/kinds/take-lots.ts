import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { addSpawnLots } from '@/lib/records/spawn-lot/add-spawn-lots';
import { addSpawnLotInput } from '@/lib/records/spawn-lot/spawn-lot.input';
import { addSubstrateLots } from '@/lib/records/substrate-lot/add-substrate-lots';
import { addSubstrateLotInput } from '@/lib/records/substrate-lot/substrate-lot.input';
import type { KeyedRecord } from '../known-keys';
import type { RowValues } from '../read-row';
import { setTaker } from '../set-taker';
import type { Taker, TakeSettings } from '../taker';

const everywhere = () => 'network';

function substrateRaw(values: RowValues): unknown {
  const { material, moistureSource, ...rest } = Object.fromEntries(values);
  const source = moistureSource ?? (values.has('moisturePercent') ? 'measured' : 'none');
  return { ...rest, materialId: material, moistureSource: source };
}

async function substrateKeys({ db, actor }: WriteContext): Promise<KeyedRecord[]> {
  const rows = await db.$queryRaw<{ id: string; code: string; rest: string }[]>`
    select id::text, code, concat_ws(' ', material_id, received_on, coalesce(source_name, '-'), coalesce(received_grams, 0)) as rest
    from public.substrate_lot where network_id = ${actor.networkId}::uuid`;
  return rows.flatMap(({ id, code, rest }) => [
    { key: `code ${code}`, id },
    { key: rest, id },
  ]);
}

/** A lot is the same by its code; one without a code by material, day, source and mass. */
export function takeSubstrateLots(settings: TakeSettings): Taker {
  return setTaker(
    addSubstrateLotInput,
    {
      make: (context, asked) =>
        addSubstrateLots(
          context,
          asked.map(({ input }) => input),
        ),
      raw: substrateRaw,
      scopeOf: everywhere,
      keyOf: ({ code, materialId, receivedOn, sourceName, received }) =>
        code === null ? [materialId, receivedOn, sourceName ?? '-', received ?? 0].join(' ') : `code ${code}`,
      readKeys: substrateKeys,
    },
    settings,
  );
}

function spawnRaw(values: RowValues): unknown {
  const { species, ...rest } = Object.fromEntries(values);
  return { ...rest, speciesId: species };
}

async function spawnKeys({ db, actor }: WriteContext): Promise<KeyedRecord[]> {
  const rows = await db.$queryRaw<{ id: string; code: string; rest: string }[]>`
    select id::text, code, concat_ws(' ', species_id, form, coalesce(made_on::text, '-'), coalesce(received_on::text, '-'),
      coalesce(maker, '-'), coalesce(maker_code, '-'), coalesce(received_grams, 0)) as rest
    from public.spawn_lot where network_id = ${actor.networkId}::uuid`;
  return rows.flatMap(({ id, code, rest }) => [
    { key: `code ${code}`, id },
    { key: rest, id },
  ]);
}

/** A spawn lot is the same by its code; one without a code by species, form, days, maker and mass. */
export function takeSpawnLots(settings: TakeSettings): Taker {
  return setTaker(
    addSpawnLotInput,
    {
      make: (context, asked) =>
        addSpawnLots(
          context,
          asked.map(({ input }) => input),
        ),
      raw: spawnRaw,
      scopeOf: everywhere,
      keyOf: ({ code, speciesId, form, madeOn, receivedOn, maker, makerCode, received }) =>
        code === null
          ? [
              speciesId,
              form,
              madeOn ?? '-',
              receivedOn ?? '-',
              maker ?? '-',
              makerCode ?? '-',
              received ?? 0,
            ].join(' ')
          : `code ${code}`,
      readKeys: spawnKeys,
    },
    settings,
  );
}
