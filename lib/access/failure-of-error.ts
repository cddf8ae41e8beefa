import 'server-only';
import { type Failure, invalid, notFound } from '@/lib/base/result';
import { refusalOf } from '@/lib/database/database-error';

const ruleCodes: Readonly<Record<string, string>> = {
  PB002: 'rule-before-inoculation',
  PB003: 'rule-too-many-units',
  PB004: 'rule-weighing-sums',
  PB006: 'last-coordinator',
  PB008: 'site-left',
};

/**
 * What the database refused as the answer of a command: what the row policies refuse is not found, since the two are
 * never told apart. Undefined for an error that no command foresaw, which must be thrown on.
 */
export function failureOfError(error: unknown): Failure | undefined {
  const refusal = refusalOf(error);
  if (refusal?.kind === 'not-yours' || refusal?.kind === 'missing-reference') return notFound;
  if (refusal?.kind === 'rule') return invalid('', ruleCodes[refusal.code] ?? 'rule-broken');
  if (refusal?.kind === 'duplicate') return invalid('', 'already-there');
  if (refusal?.kind === 'retry') return invalid('', 'try-again');
  return undefined;
}
