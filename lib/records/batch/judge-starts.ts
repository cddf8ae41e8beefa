import 'server-only';
import type { z } from 'zod';
import type { OneOfMany, WriteContext } from '@/lib/access/context';
import type { Result } from '@/lib/base/result';
import { checkBedLayers } from '../bed-layer/check-bed-layers';
import { firstLayersOf } from './insert-started';
import { judgeBatches, type PreparedBatch } from './prepare-batch';
import type { startBatchInput } from './start-batch.input';

type Input = z.output<typeof startBatchInput>;

/** Looks up what batches to be started point to; answers what judges one of them and asks the database nothing. */
export async function judgeStarts(
  context: WriteContext,
  inputs: readonly Input[],
): Promise<(one: OneOfMany<Input>) => Result<PreparedBatch>> {
  const judge = await judgeBatches(context, inputs, false);
  return (one) => {
    const errors = checkBedLayers(firstLayersOf(one.input));
    return errors.length > 0 ? { kind: 'invalid', errors } : judge(one);
  };
}
