import 'server-only';
import { randomBytes } from 'node:crypto';
import { hashToken } from './token';

const shape = /^pinset_[A-Za-z0-9_-]{43}$/;
const shownLetters = 13;

export type NewApiToken = {
  /** Told once, to the person who made it. */
  readonly secret: string;
  /** Its first letters, by which the person knows it again. */
  readonly prefix: string;
  readonly secretHash: string;
};

/** 256 random bits after a word by which scanners of published code find it. */
export function newApiToken(): NewApiToken {
  const secret = `pinset_${randomBytes(32).toString('base64url')}`;
  return { secret, prefix: secret.slice(0, shownLetters), secretHash: hashToken(secret) };
}

/** The hash by which a token is looked up; undefined for what cannot be one, so that it costs no question. */
export function apiTokenHash(secret: string): string | undefined {
  return shape.test(secret) ? hashToken(secret) : undefined;
}
