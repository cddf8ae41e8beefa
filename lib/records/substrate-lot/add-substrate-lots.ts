import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { addCoded } from '../fields/add-coded';
import { lotCodes } from '../fields/lot-code';
import type { Coded } from '../fields/made-before';
import { judgeSubstrateLot, materialsOf } from './prepare-substrate-lot';
import type { addSubstrateLotInput } from './substrate-lot.input';

/** Adds several lots, as the form adds one. */
export async function addSubstrateLots(
  context: WriteContext,
  inputs: readonly z.output<typeof addSubstrateLotInput>[],
): Promise<Result<Coded>[]> {
  if (context.actor.role === 'funder') return inputs.map(() => notFound);
  const materials = await materialsOf(context, inputs);
  return addCoded(context, 'substrate_lot', inputs, {
    judge: (input, own) => {
      const judged = judgeSubstrateLot(context, input, materials.get(input.materialId));
      return judged.kind === 'ok' ? ok((code: string) => ({ ...own, code, ...judged.value })) : judged;
    },
    draw: lotCodes('M'),
  });
}
