import 'server-only';
import type { z } from 'zod';
import { newApiToken } from '@/lib/access/api-token';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { instantInZone } from '@/lib/growing/instant-in-zone';
import type { makeTokenInput } from './token.input';

const mostTokens = 50;

/** Makes a token of the person's own. The secret is answered once and stored only as a hash. */
export async function makeToken(
  context: WriteContext,
  input: z.output<typeof makeTokenInput>,
): Promise<Result<{ id: string; secret: string }>> {
  const { db, actor, origin, now } = context;
  // A token never makes another, which would outlive it.
  if (actor.role === 'funder' || actor.token !== undefined) return notFound;
  const siteIds = [...new Set(input.siteIds)];
  const known = await db.site.count({ where: { id: { in: siteIds }, voidedAt: null } });
  if (known !== siteIds.length) return invalid('siteIds', 'not-an-option');
  const today = todayInZone(actor.networkTimeZone, now);
  if (input.worksUntil !== null && input.worksUntil < today) return invalid('worksUntil', 'past-date');
  const { personId, networkId } = actor;
  if ((await db.apiToken.count({ where: { personId, voidedAt: null } })) >= mostTokens)
    return invalid('', 'too-many-tokens', { max: mostTokens });
  const { secret, prefix, secretHash } = newApiToken();
  const id = newId();
  await db.apiToken.createMany({
    data: {
      ...{ networkId, id, personId, prefix, secretHash, siteIds, origin },
      name: input.name,
      mayWrite: input.scope === 'write',
      everySite: siteIds.length === 0,
      expiresAt:
        input.worksUntil === null
          ? null
          : instantInZone(addDays(input.worksUntil, 1), '00:00', actor.networkTimeZone),
      createdById: personId,
    },
  });
  return ok({ id, secret });
}
