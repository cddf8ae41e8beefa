import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { prepareSubstrateLot } from './prepare-substrate-lot';
import type { correctSubstrateLotInput } from './substrate-lot.input';

/** Puts a lot right. Batches keep the moisture they were filled with; only later batches take the new one. */
export async function correctSubstrateLot(
  context: WriteContext,
  input: z.output<typeof correctSubstrateLotInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor } = context;
  const lot = await db.substrateLot.findFirst({ where: { id: input.id, voidedAt: null } });
  if (!lot || (actor.role !== 'coordinator' && lot.createdById !== actor.personId)) return notFound;
  const prepared = await prepareSubstrateLot(context, input);
  if (prepared.kind !== 'ok') return prepared;
  const code = input.code ?? lot.code;
  if (await db.substrateLot.findFirst({ where: { code, id: { not: input.id } } }))
    return invalid('code', 'code-taken', { code });
  const { count } = await db.substrateLot.updateMany({
    where: { id: input.id, revision: input.revision, voidedAt: null },
    data: { code, ...prepared.value },
  });
  return count === 1 ? ok({ id: input.id }) : { kind: 'conflict', current: lot.revision };
}
