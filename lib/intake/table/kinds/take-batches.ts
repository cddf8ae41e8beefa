import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { startBatches } from '@/lib/records/batch/start-batches';
import type { KeyedRecord } from '../known-keys';
import { codeForm } from '../plain-words';
import type { RowValues } from '../read-row';
import { setTaker } from '../set-taker';
import type { Taker, TakeSettings } from '../taker';

/** What the form of a batch would have posted. */
export function rawBatch(values: RowValues, siteId: string | null): unknown {
  const value = (name: string) => values.get(name);
  const moisture = value('moisturePercent');
  return {
    code: value('code'),
    siteId: value('site') ?? siteId,
    speciesId: value('species'),
    containerKind: value('containerKind'),
    unitCount: value('unitCount'),
    inoculatedOn: value('inoculatedOn'),
    components: [
      {
        lotId: value('substrateLot') ?? '',
        treatment: value('treatment'),
        role: 'substrate',
        mass: value('massBefore'),
        massStage: 'before_treatment',
      },
    ],
    spawn: [{ lotId: value('spawnLot'), mass: value('spawnMass') }],
    filledMass: value('filledMass'),
    // A moisture that stands in a notebook was measured; without one nothing is assumed unless the table says so.
    moistureSource: value('moistureSource') ?? (moisture === undefined ? 'none' : 'measured'),
    moisturePercent: moisture,
    bedArea: value('bedArea'),
    note: value('note'),
  };
}

type Kept = { id: string; code: string; rest: string };

/** A batch is the same by its code; one without a code by site, species, day, container and units. */
async function readKeys({ db, actor }: WriteContext, scopes: readonly string[]): Promise<KeyedRecord[]> {
  const rows = await db.$queryRaw<Kept[]>`
    select id::text, code, concat_ws(' ', site_id, species_id, inoculated_on, container_kind, unit_count) as rest
    from public.batch where network_id = ${actor.networkId}::uuid and inoculated_on = any(${scopes}::date[])`;
  return rows.flatMap(({ id, code, rest }) => [
    { key: `code ${codeForm(code)} ${rest}`, id },
    { key: rest, id },
  ]);
}

export function takeBatches(settings: TakeSettings): Taker {
  return setTaker(
    startBatchInput,
    {
      make: startBatches,
      raw: (values, { siteId }) => rawBatch(values, siteId),
      scopeOf: ({ inoculatedOn }) => inoculatedOn,
      keyOf: ({ code, siteId, speciesId, inoculatedOn, containerKind, unitCount }) => {
        const rest = [siteId, speciesId, inoculatedOn, containerKind, unitCount].join(' ');
        return code === null ? rest : `code ${codeForm(code)} ${rest}`;
      },
      readKeys,
    },
    settings,
  );
}
