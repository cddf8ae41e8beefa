import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, type Result } from '@/lib/base/result';
import type { recordFindingInput } from './finding.input';
import { recordFindings } from './record-findings';

/** Records units newly found contaminated. Each unit counts once, whatever is done with it later. */
export async function recordFinding(
  context: WriteContext,
  input: z.output<typeof recordFindingInput>,
): Promise<Result<{ id: string; batchId: string }>> {
  const [recorded] = await recordFindings(context, [{ input, confirmed: context.confirmed }]);
  return recorded ?? notFound;
}
