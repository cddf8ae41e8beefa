import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, type Result } from '@/lib/base/result';
import { startTreatments } from './start-treatments';
import type { startTreatmentInput } from './treatment.input';

/** Starts a treatment run, or records one that is over: one load treated in one go. */
export async function startTreatment(
  context: WriteContext,
  input: z.output<typeof startTreatmentInput>,
): Promise<Result<{ id: string; code: string }>> {
  const [started] = await startTreatments(context, [{ input }]);
  return started ?? invalid('', 'try-again');
}
