import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { settleTrialSizeInput } from './trial.input';

/** Settles how many runs of each arm each site makes, and nothing else, in a plan that has not started. */
export async function settleTrialSize(
  { db, actor }: WriteContext,
  { id, revision, blocks }: z.output<typeof settleTrialSizeInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const trial = await db.trial.findFirst({ where: { id, voidedAt: null } });
  if (!trial) return notFound;
  if (trial.startedAt !== null) return invalid('', 'trial-started');
  const { count } = await db.trial.updateMany({
    where: { id, revision, voidedAt: null },
    data: { blocks },
  });
  return count === 0 ? { kind: 'conflict', current: trial.revision } : ok({ id });
}
