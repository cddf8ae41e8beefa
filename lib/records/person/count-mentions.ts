import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { tookTooLong } from '@/lib/database/database-error';

const longest = '5s';

/**
 * In how many places the name or the address of a person stands in words that people wrote. Every text of the network is
 * looked through; null where that takes too long, since nobody may be kept from leaving by it.
 */
export async function countMentions(
  { db }: Pick<ReadContext, 'db'>,
  personId: string,
): Promise<number | null> {
  await db.$executeRaw`savepoint mentions`;
  try {
    await db.$queryRaw`select set_config('statement_timeout', ${longest}, true)`;
    const [said] = await db.$queryRaw<{ count: number }[]>`
      select coalesce(sum(mentions), 0)::int as count from app.mentions_of(${personId}::uuid)`;
    return said?.count ?? 0;
  } catch (error) {
    if (tookTooLong(error)) return null;
    throw error;
  } finally {
    // Takes the limit back as well.
    await db.$executeRaw`rollback to savepoint mentions`;
  }
}
