import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { addCoded } from '../fields/add-coded';
import { lotCodes } from '../fields/lot-code';
import type { Coded } from '../fields/made-before';
import { judgeSpawnLot, spawnLookups } from './prepare-spawn-lot';
import type { addSpawnLotInput } from './spawn-lot.input';

/** Adds several lots, as the form adds one. */
export async function addSpawnLots(
  context: WriteContext,
  inputs: readonly z.output<typeof addSpawnLotInput>[],
): Promise<Result<Coded>[]> {
  if (context.actor.role === 'funder') return inputs.map(() => notFound);
  const known = await spawnLookups(context, inputs);
  return addCoded(context, 'spawn_lot', inputs, {
    judge: (input, own) => {
      const judged = judgeSpawnLot(context, input, own.id, known);
      return judged.kind === 'ok' ? ok((code: string) => ({ ...own, code, ...judged.value })) : judged;
    },
    draw: lotCodes('S'),
  });
}
