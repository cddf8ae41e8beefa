import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, ok, type Result } from '@/lib/base/result';
import { drawFreeCode } from '../fields/lot-code';
import { prepareTreatment } from './prepare-treatment';
import type { startTreatmentInput } from './treatment.input';

/** Starts a treatment run, or records one that is over: one load treated in one go. */
export async function startTreatment(
  context: WriteContext,
  input: z.output<typeof startTreatmentInput>,
): Promise<Result<{ id: string; code: string }>> {
  const { db, actor, origin } = context;
  const id = input.id ?? newId();
  const repeat = await db.treatmentRun.findFirst({ where: { id, createdById: actor.personId } });
  if (repeat) return ok({ id, code: repeat.code });
  const prepared = await prepareTreatment(context, input);
  if (prepared.kind !== 'ok') return prepared;
  const taken = async (code: string) => (await db.treatmentRun.findFirst({ where: { code } })) !== null;
  if (input.code !== null && (await taken(input.code)))
    return invalid('code', 'code-taken', { code: input.code });
  // Codes of other sites cannot be read here, so the unique index has the last word.
  for (let draw = 0; draw < 12; draw += 1) {
    const code = input.code ?? (await drawFreeCode('T', taken));
    const row = {
      networkId: actor.networkId,
      id,
      code,
      ...prepared.value,
      origin,
      createdById: actor.personId,
    };
    const { count } = await db.treatmentRun.createMany({ data: [row], skipDuplicates: true });
    if (count === 1) return ok({ id, code });
    if (input.code !== null) return invalid('code', 'code-taken', { code });
  }
  return invalid('', 'try-again');
}
