import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { checkExpectedDays } from './check-expected-days';
import type { changeWindowInput } from './settings.input';

/**
 * Changes the days after which batches of a species and container are judged and when what is expected of them, and
 * works out anew for each of its batches the days on which it becomes eligible.
 */
export async function changeWindow(
  { db, actor }: WriteContext,
  input: z.output<typeof changeWindowInput>,
): Promise<Result<{ id: string; batches: number }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { id, revision, reason: _reason, ...data } = input;
  const { contaminationDays, yieldDays } = data;
  const window = await db.assessmentWindow.findFirst({ where: { id, voidedAt: null } });
  if (!window) return notFound;
  const errors = checkExpectedDays(data);
  if (errors.length > 0) return { kind: 'invalid', errors };
  const { count } = await db.assessmentWindow.updateMany({
    where: { id, revision },
    data,
  });
  if (count === 0) return { kind: 'conflict', current: window.revision };
  const batches = await db.$executeRaw`update batch set
      contamination_assessed_on = inoculated_on + ${contaminationDays}::int,
      yield_assessed_on = inoculated_on + ${yieldDays}::int
    where network_id = ${actor.networkId}::uuid and species_id = ${window.speciesId}::uuid
      and container_kind = ${window.containerKind}::container_kind
      and (contamination_assessed_on is distinct from inoculated_on + ${contaminationDays}::int
        or yield_assessed_on is distinct from inoculated_on + ${yieldDays}::int)`;
  return ok({ id, batches });
}
