import { type Address, givenOnce } from '@/lib/base/given-once';

const mostLetters = 40;

/** The boxes of a day as the address fills them, readable or not; an ISO date is taken apart, '' where it says nothing. */
export function typedDay(address: Address, name: 'from' | 'to'): Record<string, string> {
  const given = givenOnce(address);
  const parts = ['day', 'month', 'year'] as const;
  const boxed = parts.some((part) => given[`${name}__${part}`] !== undefined);
  const linked = given[name] ?? '';
  const [, year, month, day] = /^(\d+)-(\d+)-(\d+)$/.exec(linked) ?? [];
  const taken = day === undefined ? { day: linked } : { day, month, year };
  const texts: Partial<Record<(typeof parts)[number], string | undefined>> = boxed
    ? Object.fromEntries(parts.map((part) => [part, given[`${name}__${part}`]]))
    : taken;
  return Object.fromEntries(
    parts.map((part) => [`${name}__${part}`, (texts[part] ?? '').slice(0, mostLetters)]),
  );
}
