import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, type Result } from '@/lib/base/result';
import { addSubstrateLots } from './add-substrate-lots';
import type { addSubstrateLotInput } from './substrate-lot.input';

/** Adds a lot of material: one delivery of one material from one source. */
export async function addSubstrateLot(
  context: WriteContext,
  input: z.output<typeof addSubstrateLotInput>,
): Promise<Result<{ id: string; code: string }>> {
  const [added] = await addSubstrateLots(context, [input]);
  return added ?? notFound;
}
