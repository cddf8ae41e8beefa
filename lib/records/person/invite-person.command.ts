import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { hashToken, newToken } from '@/lib/access/token';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { invitePersonInput } from './invite-person.input';

const validDays = 14;

/** Makes an invitation link. The token is answered once and stored only as a hash. */
export async function invitePerson(
  context: WriteContext,
  input: z.output<typeof invitePersonInput>,
): Promise<Result<{ id: string; token: string }>> {
  const { db, actor, origin, now } = context;
  if (actor.role !== 'coordinator') return notFound;
  const siteIds = input.role === 'member' ? input.siteIds : [];
  if (input.role === 'member' && siteIds.length === 0) return invalid('siteIds', 'missing-choice');
  const known = await db.site.count({ where: { id: { in: siteIds }, voidedAt: null, leftAt: null } });
  if (known !== new Set(siteIds).size) return invalid('siteIds', 'not-an-option');
  const token = newToken();
  const id = newId();
  await db.invitation.create({
    data: {
      networkId: actor.networkId,
      id,
      tokenHash: hashToken(token),
      role: input.role,
      siteIds,
      forName: input.forName,
      expiresAt: new Date(now.getTime() + validDays * 86_400_000),
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id, token });
}
