import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import { isUnavailable } from '@/lib/database/is-unavailable';

/** Throws that time ran out when the transaction is over. */
async function throwIfOver(db: Prisma.TransactionClient): Promise<void> {
  const over = await db.$queryRaw`select 1`.then(
    () => undefined,
    (why: unknown) => why,
  );
  if (isUnavailable(over)) throw over;
}

/**
 * Runs the work of one transaction. A transaction that runs out of time in the middle of a read goes on for a few
 * statements in which the database no longer knows who asks: rows are missing from what was read, and code that relies
 * on them breaks or refuses. Nothing of it is committed or answered; what is told is that time ran out.
 *
 * @param refuses of an answer that takes the transaction back, whose end would then not fail.
 */
export async function toldTruly<T>(
  db: Prisma.TransactionClient,
  work: () => Promise<T>,
  refuses: (answer: T) => boolean = () => false,
): Promise<T> {
  let answer: T;
  try {
    answer = await work();
  } catch (error) {
    if (error instanceof TypeError) await throwIfOver(db);
    throw error;
  }
  if (refuses(answer)) await throwIfOver(db);
  return answer;
}
