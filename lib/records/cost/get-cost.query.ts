import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { networkCurrency } from '../programme/network-currency';
import type { CostSubject } from './cost.input';

/** What is known of the costs of a batch or run; undefined when it is not there or not yours. */
export async function getCost(context: ReadContext, of: CostSubject, about: string) {
  const { db } = context;
  const query = { where: { id: about, voidedAt: null }, select: { code: true } };
  const subject = of === 'batch' ? await db.batch.findFirst(query) : await db.treatmentRun.findFirst(query);
  if (!subject) return undefined;
  const note = await db.costNote.findFirst({
    where: { ...(of === 'batch' ? { batchId: about } : { treatmentRunId: about }), voidedAt: null },
  });
  const currency = note?.currency ?? (await networkCurrency(context));
  return {
    code: subject.code,
    currency,
    note: note && {
      id: note.id,
      revision: note.revision,
      labourMinutes: note.labourMinutes,
      suppliesMinor: note.suppliesMinor,
      fuelMinor: note.fuelMinor,
      waterMinor: note.waterMinor,
      note: note.note,
    },
  };
}

export type CostView = NonNullable<Awaited<ReturnType<typeof getCost>>>;
