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
import { spawnReceipts, substrateReceipts } from '../resource/receipts';
import { spawnLots, substrateLots } from '../resource/stock';
import type { Operation } from './operation';
import { readOperations } from './read-operations';
import { correct, create, voiding } from './write-operations';

/** Lots, which belong to the network, and what of them came to a site. */
export const stockOperations: readonly Operation[] = [
  ...readOperations(substrateLots, 'lots'),
  create(substrateLots, 'lots', addSubstrateLotInput, addSubstrateLot),
  correct(substrateLots, 'lots', correctSubstrateLotInput, correctSubstrateLot),
  voiding(substrateLots, 'substrate-lot'),
  ...readOperations(substrateReceipts, 'lots'),
  create(substrateReceipts, 'lots', receiveSubstrateInput, receiveSubstrate),
  voiding(substrateReceipts, 'substrate-receipt'),
  ...readOperations(spawnLots, 'lots'),
  create(spawnLots, 'lots', addSpawnLotInput, addSpawnLot),
  correct(spawnLots, 'lots', correctSpawnLotInput, correctSpawnLot),
  voiding(spawnLots, 'spawn-lot'),
  ...readOperations(spawnReceipts, 'lots'),
  create(spawnReceipts, 'lots', receiveSpawnInput, receiveSpawn),
  voiding(spawnReceipts, 'spawn-receipt'),
];
