import type { Unreadable } from '@/lib/growing/quantity-entry';
import { type Reading, wrong } from './entry-field';

const codes: Readonly<Record<Unreadable['why'], string>> = {
  empty: 'missing',
  'too-long': 'not-a-number',
  'not-a-number': 'not-a-number',
  negative: 'negative',
  'more-than-one-number': 'not-a-number',
  'unknown-unit': 'unit-unknown',
  'part-too-large': 'not-a-number',
  'not-whole': 'not-whole',
  'too-small': 'not-positive',
  'too-large': 'not-a-number',
};

/** Turns why an entry cannot be read into the error code of a form. */
export function unreadableCode({ why }: Unreadable): Reading<never> {
  return wrong(codes[why]);
}

/** Asks which of the first two readings was meant. */
export function ambiguous(readings: readonly number[], spoken: (value: number) => string): Reading<never> {
  const [first = 0, second = 0] = readings;
  return wrong('ambiguous-number', { first: spoken(first), second: spoken(second) });
}
