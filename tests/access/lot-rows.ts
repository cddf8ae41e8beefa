import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { addSpawnLot } from '@/lib/records/spawn-lot/add-spawn-lot.command';
import { correctSpawnLot } from '@/lib/records/spawn-lot/correct-spawn-lot.command';
import { receiveSpawn } from '@/lib/records/spawn-lot/receive-spawn.command';
import {
  addSpawnLotInput,
  correctSpawnLotInput,
  receiveSpawnInput,
} from '@/lib/records/spawn-lot/spawn-lot.input';
import { addSubstrateLot } from '@/lib/records/substrate-lot/add-substrate-lot.command';
import { correctSubstrateLot } from '@/lib/records/substrate-lot/correct-substrate-lot.command';
import { receiveSubstrate } from '@/lib/records/substrate-lot/receive-substrate.command';
import {
  addSubstrateLotInput,
  correctSubstrateLotInput,
  receiveSubstrateInput,
} from '@/lib/records/substrate-lot/substrate-lot.input';
import { addReading } from '@/lib/records/treatment/add-reading.command';
import { allocateTreatment } from '@/lib/records/treatment/allocate-treatment.command';
import { correctTreatment } from '@/lib/records/treatment/correct-treatment.command';
import { endTreatment } from '@/lib/records/treatment/end-treatment.command';
import { startTreatment } from '@/lib/records/treatment/start-treatment.command';
import {
  addReadingInput,
  allocateTreatmentInput,
  correctTreatmentInput,
  endTreatmentInput,
  startTreatmentInput,
} from '@/lib/records/treatment/treatment.input';
import { command, type OperationRow } from './operation-rows';
import { arrange, revisionOf, type World } from './world';

const reason = 'tried';

async function straw({ people }: World): Promise<string> {
  return readAs(
    people.coordinator,
    async ({ db }) => (await db.material.findFirstOrThrow({ where: { code: 'wheat_straw' } })).id,
  );
}

async function substrate(world: World) {
  return { materialId: await straw(world), receivedOn: '2026-03-02', moistureSource: 'none' };
}

const spawn = ({ stock }: World) => ({ speciesId: stock.oyster, form: 'grain' });

const run = ({ people, stock }: World) => ({
  siteId: people.millLane,
  methodId: stock.hotWater,
  startedAt: '2026-04-01T10:00:00Z',
});

async function freshRun(world: World) {
  const { id } = await arrange(world.people.coordinator, startTreatmentInput, startTreatment, run(world));
  return { id, revision: await revisionOf(world, 'treatment_run', id), reason };
}

/** Lots belong to the network: any member adds one, whoever added it or the coordinator mends it. Runs belong to a site. */
export const lotRows: readonly OperationRow[] = [
  command(
    'records/substrate-lot/add-substrate-lot.command',
    'yyy--',
    addSubstrateLotInput,
    addSubstrateLot,
    substrate,
  ),
  command(
    'records/substrate-lot/correct-substrate-lot.command',
    'y----',
    correctSubstrateLotInput,
    correctSubstrateLot,
    async (w) => ({
      ...(await substrate(w)),
      id: w.stock.straw,
      revision: await revisionOf(w, 'substrate_lot', w.stock.straw),
      reason,
    }),
  ),
  command(
    'records/substrate-lot/receive-substrate.command',
    'yy---',
    receiveSubstrateInput,
    receiveSubstrate,
    (w) => ({
      id: newId(),
      substrateLotId: w.stock.straw,
      siteId: w.people.millLane,
      receivedOn: '2026-03-05',
      mass: 1_000,
    }),
  ),
  command('records/spawn-lot/add-spawn-lot.command', 'yyy--', addSpawnLotInput, addSpawnLot, spawn),
  command(
    'records/spawn-lot/correct-spawn-lot.command',
    'y----',
    correctSpawnLotInput,
    correctSpawnLot,
    async (w) => ({
      ...spawn(w),
      id: w.stock.secondOysterSpawn,
      revision: await revisionOf(w, 'spawn_lot', w.stock.secondOysterSpawn),
      reason,
    }),
  ),
  command('records/spawn-lot/receive-spawn.command', 'yy---', receiveSpawnInput, receiveSpawn, (w) => ({
    id: newId(),
    spawnLotId: w.stock.oysterSpawn,
    siteId: w.people.millLane,
    receivedOn: '2026-03-05',
    mass: 1_000,
  })),
  command('records/treatment/start-treatment.command', 'yy---', startTreatmentInput, startTreatment, run),
  command(
    'records/treatment/correct-treatment.command',
    'yy---',
    correctTreatmentInput,
    correctTreatment,
    async (w) => ({
      ...run(w),
      ...(await freshRun(w)),
      note: 'corrected',
    }),
  ),
  command('records/treatment/end-treatment.command', 'yy---', endTreatmentInput, endTreatment, async (w) => ({
    ...(await freshRun(w)),
    endedAt: '2026-04-01T12:00:00Z',
  })),
  command('records/treatment/add-reading.command', 'yy---', addReadingInput, addReading, (w) => ({
    id: newId(),
    treatmentRunId: w.stock.bathRun,
    readAt: '2026-03-30T15:00:00Z',
    celsius: 70,
  })),
  command(
    'records/treatment/allocate-treatment.command',
    'y----',
    allocateTreatmentInput,
    allocateTreatment,
    async (w) => ({
      treatmentRunId: (await freshRun(w)).id,
      siteId: w.people.quarry,
    }),
  ),
];
