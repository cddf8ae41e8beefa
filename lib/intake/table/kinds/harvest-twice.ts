import type { Failure } from '@/lib/base/result';
import type { KnownKeys } from '../known-keys';

/**
 * What is asked before a batch has the same mass from the same day once more: two equal weighings of a day do happen,
 * and so do lines that were copied.
 */
export function askTwice(
  keys: KnownKeys,
  key: string,
  weighedOn: string,
  confirmed: ReadonlySet<string>,
): Failure | undefined {
  if (!keys.has(key) || confirmed.has('intake-harvest-twice')) return undefined;
  const values = { date: weighedOn };
  return { kind: 'confirm', questions: [{ field: 'fresh', code: 'intake-harvest-twice', values }] };
}
