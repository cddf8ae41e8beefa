import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { leaveSiteInput } from './leave-site.input';

/**
 * Lets a site leave, for its members and the coordinator. What is being written there at this moment is either in before
 * the site leaves, and leaves with it, or is refused.
 */
export async function leaveSite(
  { db, actor }: WriteContext,
  { id, figures, reason }: z.output<typeof leaveSiteInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role === 'funder') return notFound;
  const [row] = await db.$queryRaw<{ left: boolean }[]>`
    select app.leave_site(${id}::uuid, ${figures === 'withdrawn'}, ${reason}) as "left"`;
  return row?.left ? ok({ id }) : notFound;
}
