import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, type Result } from '@/lib/base/result';
import { addSpawnLots } from './add-spawn-lots';
import type { addSpawnLotInput } from './spawn-lot.input';

/** Adds a spawn lot: what one maker made in one go of one strain. */
export async function addSpawnLot(
  context: WriteContext,
  input: z.output<typeof addSpawnLotInput>,
): Promise<Result<{ id: string; code: string }>> {
  const [added] = await addSpawnLots(context, [input]);
  return added ?? notFound;
}
