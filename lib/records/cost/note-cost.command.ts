import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { networkCurrency } from '../programme/network-currency';
import type { noteCostInput } from './cost.input';
import { minorColumns } from './minor-columns';

/**
 * Writes down what a batch or a treatment run cost, or changes it: work in minutes, the rest in minor units. What is
 * left out was not recorded and is named as missing; 0 says that there was none.
 */
export async function noteCost(
  context: WriteContext,
  input: z.output<typeof noteCostInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin } = context;
  const { of, about, revision, labourMinutes, note, reason } = input;
  const id = input.id ?? newId();
  const where = { id: about, voidedAt: null };
  const subject =
    of === 'batch' ? await db.batch.findFirst({ where }) : await db.treatmentRun.findFirst({ where });
  if (!subject) return notFound;
  const link = of === 'batch' ? { batchId: about } : { treatmentRunId: about };
  const existing = await db.costNote.findFirst({ where: { ...link, voidedAt: null } });
  const repeated = existing?.id === input.id && existing?.createdById === actor.personId && revision === null;
  if (repeated) return ok({ id });
  const currency = existing?.currency ?? (await networkCurrency(context));
  const amounts = minorColumns(input, currency);
  if (amounts.kind !== 'ok') return amounts;
  const data = { labourMinutes, note, ...amounts.value };
  const given = [labourMinutes, ...Object.values(amounts.value)].some((part) => part !== null);
  if (!given && existing === null) return invalid('labourMinutes', 'cost-empty');
  if (existing) {
    if (revision !== null && reason === null) return invalid('reason', 'missing');
    const { count } = await db.costNote.updateMany({
      where: { id: existing.id, revision: revision ?? 0, voidedAt: null },
      data,
    });
    return count === 1 ? ok({ id: existing.id }) : { kind: 'conflict', current: existing.revision };
  }
  const { networkId, personId: createdById } = actor;
  const row = { networkId, id, siteId: subject.siteId, ...link, ...data, currency, origin, createdById };
  await db.costNote.create({ data: row });
  return ok({ id });
}
