import 'server-only';
import { hash, verify } from '@node-rs/argon2';
import { ZxcvbnFactory } from '@zxcvbn-ts/core';
import * as common from '@zxcvbn-ts/language-common';
import { type Failure, invalid } from '@/lib/base/result';

// OWASP Password Storage Cheat Sheet: argon2id, at least 19 MiB, two passes, one lane.
const settings = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;
const atOnce = 4;
let running = 0;
const waiting: (() => void)[] = [];

/** Bounds how many hashes run together, so that a burst of sign-ins cannot take the machine's memory. */
async function queued<T>(work: () => Promise<T>): Promise<T> {
  while (running >= atOnce) await new Promise<void>((resume) => waiting.push(resume));
  running += 1;
  try {
    return await work();
  } finally {
    running -= 1;
    waiting.shift()?.();
  }
}

export function hashPassword(password: string): Promise<string> {
  return queued(() => hash(password, settings));
}

let dummy: Promise<string> | undefined;

/** Checks a password; without a stored hash it takes as long, so that the answer does not tell who is known. */
export async function passwordFits(password: string, stored: string | undefined): Promise<boolean> {
  dummy ??= hashPassword('no one has this password');
  const against = stored ?? (await dummy);
  const fits = await queued(() => verify(against, password));
  return fits && stored !== undefined;
}

const strength = new ZxcvbnFactory({ dictionary: common.dictionary, graphs: common.adjacencyGraphs });

const shortest = 10;
const longest = 200;

/** What is wrong with a new password; undefined when it may be used. `own`: words that must not make it up. */
export function passwordProblem(
  field: string,
  password: string,
  own: readonly string[],
): Failure | undefined {
  if (password.length < shortest) return invalid(field, 'password-short', { min: shortest });
  if (password.length > longest) return invalid(field, 'password-long', { max: longest });
  return strength.check(password, [...own]).score < 2 ? invalid(field, 'password-common') : undefined;
}
