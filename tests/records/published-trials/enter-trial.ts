import { addDays } from '@/lib/growing/calendar-date';
import { sources } from '@/lib/growing/sources';
import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { addSpawnLot } from '@/lib/records/spawn-lot/add-spawn-lot.command';
import { addSpawnLotInput } from '@/lib/records/spawn-lot/spawn-lot.input';
import { addSubstrateLot } from '@/lib/records/substrate-lot/add-substrate-lot.command';
import { addSubstrateLotInput } from '@/lib/records/substrate-lot/substrate-lot.input';
import { recordWeighing } from '@/lib/records/weighing/record-weighing.command';
import { recordWeighingInput } from '@/lib/records/weighing/weighing.input';
import { enter } from './enter';
import { asPublished, type TrialNetwork } from './trial-network';
import { gramsOf, type TrialRow, unitsOf } from './trial-rows';

// The sources give no calendar days: these are invented, and BE does not depend on them.
const receivedOn = '2026-01-02';
const inoculatedOn = '2026-01-05';
const daysPerFlush = 30;

const materialCodes: Readonly<Record<string, string>> = {
  'wheat straw': 'wheat_straw',
  'rice straw': 'rice_straw',
  'kikar sawdust 100%': 'hardwood_sawdust',
  'maize residues 100%': 'corn_stalks',
};

const methodCodes: Readonly<Record<string, string>> = { 'hot water': 'hot_water_bath' };

function idBy(rows: readonly { readonly id: string; readonly code: string }[], code: string): string {
  const row = rows.find((one) => one.code === code);
  if (!row) throw new Error(`the network has no ${code}`);
  return row.id;
}

/**
 * What the batch's form is given for the substrate. A dry mass goes the way of a mass before treatment, from a lot
 * at 0 % moisture; a kilogram of wet substrate goes the way of a filled mass, with the moisture that its dry part
 * leaves: 290 g of 1000 g is 71 %.
 */
function substrateFields({ perWetKilogram, dry }: TrialRow, units: number) {
  return perWetKilogram
    ? {
        component: { mass: '', massStage: 'filled' },
        filled: {
          filledMass: 1000 * units,
          moistureSource: 'measured',
          moisturePercent: Number((100 - Number(dry) / 10).toFixed(2)),
        },
      }
    : {
        component: { mass: gramsOf(dry, units), massStage: 'before_treatment' },
        filled: { filledMass: '', moistureSource: 'none', moisturePercent: '' },
      };
}

/** Enters one batch of a trial with its flushes, form by form; answers its id. */
export async function enterTrial(network: TrialNetwork, batch: readonly TrialRow[]): Promise<string> {
  const { coordinator, siteId, choices } = network;
  const [row] = batch;
  if (!row) throw new Error('a batch without rows');
  const speciesId = idBy(choices.species, row.species.toLowerCase().replace(' ', '_'));
  const methodId = idBy(choices.methods, methodCodes[row.treatment] ?? asPublished);
  const units = unitsOf(batch);
  const { component, filled } = substrateFields(row, units);
  const lot = await enter(coordinator, addSubstrateLotInput, addSubstrateLot, {
    code: `M-${row.id}`,
    materialId: idBy(choices.materials, materialCodes[row.substrate] ?? asPublished),
    sourceName: row.substrate,
    receivedOn,
    moistureSource: row.perWetKilogram ? 'none' : 'measured',
    moisturePercent: row.perWetKilogram ? '' : 0,
  });
  const spawn = await enter(coordinator, addSpawnLotInput, addSpawnLot, {
    code: `S-${row.id}`,
    speciesId,
    form: 'grain',
    madeOn: receivedOn,
  });
  const { id } = await enter(coordinator, startBatchInput, startBatch, {
    ...{ siteId, speciesId, containerKind: 'bag', unitCount: units, inoculatedOn },
    components: [{ ...component, lotId: lot.id, treatment: `method:${methodId}`, role: 'substrate' }],
    spawn: [{ lotId: spawn.id, mass: '' }],
    ...filled,
    note: `${sources[row.source]}. Dry substrate ${row.dryIs}.`,
  });
  for (const { flush, fresh } of batch)
    await enter(coordinator, recordWeighingInput, recordWeighing, {
      weighedOn: addDays(inoculatedOn, daysPerFlush * (flush ?? 1)),
      fresh: gramsOf(fresh, units),
      lines: [{ batchId: id, flush: flush ?? 1 }],
    });
  return id;
}
