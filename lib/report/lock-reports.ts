import 'server-only';
import type { WriteContext } from '@/lib/access/context';

/**
 * One after the other, until the transaction ends: whoever builds, revises or publishes a report of a network holds it
 * against those that are published, and must not miss one that is just being published.
 */
export async function lockReports({ db, actor }: WriteContext): Promise<void> {
  await db.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`reports ${actor.networkId}`}, 0))`;
}
