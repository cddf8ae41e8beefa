import type { Address } from '@/lib/base/given-once';
import type { FieldError } from '@/lib/base/result';
import { askedDay } from './asked-day';
import type { ComparisonFilter } from './comparison-filter.input';

/**
 * What is wrong with the days that an address asks for: no date, or a beginning after the end. `usual` are the days taken
 * for an end that it does not give. Empty when the figures are for the days that were asked for.
 */
export function dayProblems(
  address: Address,
  usual: Pick<ComparisonFilter, 'from' | 'to'>,
): readonly FieldError[] {
  const asked = { from: askedDay(address, 'from'), to: askedDay(address, 'to') };
  const unreadable = (['from', 'to'] as const).filter((name) => asked[name].typed && !asked[name].date);
  if (unreadable.length > 0) return unreadable.map((field) => ({ field, code: 'not-a-date' }));
  const [from, to] = [asked.from.date ?? usual.from, asked.to.date ?? usual.to];
  if (from <= to) return [];
  // The field that was left empty cannot be the wrong one where the other alone was typed.
  return asked.to.typed && asked.from.typed
    ? [{ field: 'to', code: 'before', values: { date: from } }]
    : [{ field: 'from', code: 'after', values: { date: to } }];
}
