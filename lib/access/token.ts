import 'server-only';
import { createHash, randomBytes } from 'node:crypto';

/** 192 random bits for a link. */
export function newToken(): string {
  return randomBytes(24).toString('base64url');
}

/** Tokens are stored hashed: whoever reads the table cannot use them. */
export function hashToken(token: string): string {
  return createHash('sha256').update(token).digest('hex');
}
