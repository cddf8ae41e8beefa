import type { FieldError } from '@/lib/base/result';
import type { ExpectedColumns } from './expected-days-columns';

const ranges = [
  ['colonisedFromDays', 'colonisedToDays'],
  ['pinsFromDays', 'pinsToDays'],
  ['firstHarvestFromDays', 'firstHarvestToDays'],
  ['betweenFlushesFromDays', 'betweenFlushesToDays'],
] as const;

/** Each range has both ends or none, and does not end before it begins. */
export function checkExpectedDays(days: ExpectedColumns): FieldError[] {
  return ranges.flatMap(([from, to]): FieldError[] => {
    const first = days[from];
    const last = days[to];
    if (first === null && last === null) return [];
    if (first === null) return [{ field: from, code: 'missing' }];
    if (last === null) return [{ field: to, code: 'missing' }];
    return last < first ? [{ field: to, code: 'too-small', values: { min: first } }] : [];
  });
}
