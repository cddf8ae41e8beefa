import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { latestSignals, type Signal } from './signal';

/** The signals since a day that nobody has answered, the newest first. */
export async function openSignals(
  { db }: ReadContext,
  all: readonly Signal[],
  since: string,
): Promise<Signal[]> {
  const signals = latestSignals(all, since);
  const answered = await db.signalAnswer.findMany({
    where: { signalKey: { in: signals.map(({ key }) => key) }, answer: { not: 'open' }, voidedAt: null },
    select: { signalKey: true },
  });
  const keys = new Set(answered.map(({ signalKey }) => signalKey));
  return signals.filter(({ key }) => !keys.has(key));
}
