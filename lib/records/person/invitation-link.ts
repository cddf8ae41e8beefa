import 'server-only';
import { hashToken, newToken } from '@/lib/access/token';

const validDays = 14;

/** What a new link of an invitation stands for: the token to hand over, and what is kept of it. */
export function newInvitationLink(now: Date) {
  const token = newToken();
  return {
    token,
    kept: { tokenHash: hashToken(token), expiresAt: new Date(now.getTime() + validDays * 86_400_000) },
  };
}
