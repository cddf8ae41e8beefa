import 'server-only';
import type { Prisma } from '@/lib/database/generated/client';
import { isUnavailable } from '@/lib/database/is-unavailable';

/**
 * Runs the work of one transaction. A transaction that runs out of time in the middle of a read goes on for a few
 * statements in which the database no longer knows who asks: rows are missing from what was read, and code that relies
 * on them breaks. Nothing of it is committed or answered; what is thrown on is that time ran out, not what broke.
 */
export async function toldTruly<T>(db: Prisma.TransactionClient, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof TypeError) {
      const over = await db.$queryRaw`select 1`.then(
        () => undefined,
        (why: unknown) => why,
      );
      if (isUnavailable(over)) throw over;
    }
    throw error;
  }
}
