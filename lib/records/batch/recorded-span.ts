import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { asCalendarDate } from '../fields/stored-date';

/** First and last calendar date on which anything was recorded about a batch; undefined when nothing was. */
export async function recordedSpan(
  { db }: ReadContext,
  batchId: string,
): Promise<{ first: string; last: string } | undefined> {
  const where = { batchId, voidedAt: null };
  const weighed = await db.weighing.findMany({
    where: { voidedAt: null, lines: { some: where } },
    select: { weighedOn: true },
  });
  const dates = [
    ...weighed.map(({ weighedOn }) => weighedOn),
    ...(await db.look.findMany({ where, select: { lookedOn: true } })).map(({ lookedOn }) => lookedOn),
    ...(await db.finding.findMany({ where, select: { foundOn: true } })).map(({ foundOn }) => foundOn),
    ...(await db.loss.findMany({ where, select: { lostOn: true } })).map(({ lostOn }) => lostOn),
    ...(await db.check.findMany({ where, select: { checkedOn: true } })).map(({ checkedOn }) => checkedOn),
  ]
    .map(asCalendarDate)
    .sort();
  const [first] = dates;
  const last = dates.at(-1);
  return first === undefined || last === undefined ? undefined : { first, last };
}
