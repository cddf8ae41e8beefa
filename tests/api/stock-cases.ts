import { startBatch } from '@/lib/records/batch/start-batch.command';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { startSecondLifeInput } from '@/lib/records/second-life/second-life.input';
import { startSecondLife } from '@/lib/records/second-life/start-second-life.command';
import { addSpawnLot } from '@/lib/records/spawn-lot/add-spawn-lot.command';
import { receiveSpawn } from '@/lib/records/spawn-lot/receive-spawn.command';
import { addSpawnLotInput, receiveSpawnInput } from '@/lib/records/spawn-lot/spawn-lot.input';
import { addSubstrateLot } from '@/lib/records/substrate-lot/add-substrate-lot.command';
import { receiveSubstrate } from '@/lib/records/substrate-lot/receive-substrate.command';
import { addSubstrateLotInput, receiveSubstrateInput } from '@/lib/records/substrate-lot/substrate-lot.input';
import { arrange, type World } from '../access/world';
import { twentyBags } from '../support/shed';
import type { Case } from './cases';

const reason = 'tried';

/** Lots are made by Mill Lane's member, who with the coordinator may mend them; what came to a site is the site's. */
export function stockCases(
  { people, stock }: World,
  materialId: string,
): readonly (readonly [string, Case])[] {
  const { member, millLane, coordinator } = people;
  const material = { materialId, receivedOn: '2026-03-02', moistureSource: 'none' };
  const spawn = { speciesId: stock.oyster, form: 'grain' };
  const came = { siteId: millLane, receivedOn: '2026-03-05' };
  const ofMaterial = { ...came, substrateLotId: stock.straw };
  const ofSpawn = { ...came, spawnLotId: stock.oysterSpawn };
  const newMaterial = async () => (await arrange(member, addSubstrateLotInput, addSubstrateLot, material)).id;
  const newSpawn = async () => (await arrange(member, addSpawnLotInput, addSpawnLot, spawn)).id;
  const newReceipt = async () =>
    (await arrange(member, receiveSubstrateInput, receiveSubstrate, { ...ofMaterial, mass: 900 })).id;
  const newSpawnReceipt = async () =>
    (await arrange(member, receiveSpawnInput, receiveSpawn, { ...ofSpawn, mass: 900 })).id;
  const newSource = async () =>
    (await arrange(coordinator, startBatchInput, startBatch, twentyBags(people, stock))).id;
  const life = async () => ({
    ...{ siteId: millLane, speciesId: stock.oyster, containerKind: 'bed', unitCount: 1 },
    ...{ inoculatedOn: '2026-07-10', moistureSource: 'none', way: 'buried_in_soil' },
    sources: [{ batchId: await newSource(), units: 2 }],
  });
  const newLife = async () => {
    const body = await life();
    return { id: (await arrange(coordinator, startSecondLifeInput, startSecondLife, body)).id, body };
  };
  const voiding = (made: () => Promise<string>) => async () => ({
    ...{ id: await made(), revision: 1, body: { reason } },
  });
  return [
    ['createSubstrateLots', async () => ({ body: { ...material, receivedGrams: 20_000 } })],
    [
      'correctSubstrateLots',
      async () => ({ id: await newMaterial(), revision: 1, body: { ...material, note: 'Dry', reason } }),
    ],
    ['voidSubstrateLots', voiding(newMaterial)],
    ['createSpawnLots', async () => ({ body: { ...spawn, receivedGrams: 2_000 } })],
    [
      'correctSpawnLots',
      async () => ({ id: await newSpawn(), revision: 1, body: { ...spawn, maker: 'Tarn Lab', reason } }),
    ],
    ['voidSpawnLots', voiding(newSpawn)],
    ['listSubstrateReceipts', async () => ({})],
    ['readSubstrateReceipts', async () => ({ id: await newReceipt() })],
    ['createSubstrateReceipts', async () => ({ body: { ...ofMaterial, massGrams: 900 } })],
    ['voidSubstrateReceipts', voiding(newReceipt)],
    ['listSpawnReceipts', async () => ({})],
    ['readSpawnReceipts', async () => ({ id: await newSpawnReceipt() })],
    ['createSpawnReceipts', async () => ({ body: { ...ofSpawn, massGrams: 900 } })],
    ['voidSpawnReceipts', voiding(newSpawnReceipt)],
    ['listSecondLives', async () => ({})],
    ['readSecondLives', async () => ({ id: (await newLife()).id })],
    ['createSecondLives', async () => ({ body: await life() })],
    [
      'correctSecondLives',
      async () => {
        const { id, body } = await newLife();
        return { id, revision: 1, body: { ...body, note: 'Moved', reason } };
      },
    ],
  ];
}
