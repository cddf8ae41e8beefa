import { type Failure, invalid, ok, type Result } from '@/lib/base/result';
import { asDate } from '../fields/stored-date';
import type { ConsentKind } from './participant.input';

export type ConsentDates = {
  readonly countedOn: Date | null;
  readonly namedOn: Date | null;
  readonly picturedOn: Date | null;
};

type Given = {
  readonly consents: readonly ConsentKind[];
  readonly agreedOn: string | null;
  readonly today: string;
};

export const noConsent: ConsentDates = { countedOn: null, namedOn: null, picturedOn: null };

/** The days of the consents that hold from now on: a standing one keeps its day, a new one gets the day given. */
export function consentDates(before: ConsentDates, given: Given): Result<ConsentDates> {
  const { consents, agreedOn, today } = given;
  const column = { counted: 'countedOn', named: 'namedOn', pictured: 'picturedOn' } as const;
  const isNew = consents.some((kind) => before[column[kind]] === null);
  const problem = isNew ? dayProblem(agreedOn, today) : undefined;
  if (problem) return problem;
  const day = agreedOn === null ? null : asDate(agreedOn);
  const dayOf = (kind: ConsentKind) => (consents.includes(kind) ? (before[column[kind]] ?? day) : null);
  return ok({ countedOn: dayOf('counted'), namedOn: dayOf('named'), picturedOn: dayOf('pictured') });
}

function dayProblem(agreedOn: string | null, today: string): Failure | undefined {
  if (agreedOn === null) return invalid('agreedOn', 'missing');
  return agreedOn > today ? invalid('agreedOn', 'future-date') : undefined;
}
