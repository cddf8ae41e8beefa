import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, type Result } from '@/lib/base/result';
import type { startBatchInput } from './start-batch.input';
import { startBatches } from './start-batches';

/** Starts a batch: units inoculated on one day with one species at one site. */
export async function startBatch(
  context: WriteContext,
  input: z.output<typeof startBatchInput>,
): Promise<Result<{ id: string; code: string }>> {
  const [started] = await startBatches(context, [{ input, confirmed: context.confirmed }]);
  return started ?? invalid('', 'try-again');
}
