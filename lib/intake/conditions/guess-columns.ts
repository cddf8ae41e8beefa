import type { ColumnRole, DecimalMark } from '@/lib/growing/condition-table-layout';
import { dateParts } from './read-moment';
import { isNothing, readValue } from './read-value';

const named: readonly (readonly [RegExp, ColumnRole])[] = [
  [/dew|rocio|abs|pressure|presion|batt|bater|volt|lux|luz|light/, 'skip'],
  [/co2|carbon|ppm/, 'carbon_dioxide'],
  [/hum|(^|\W)(rh|hr)(\W|$)|%/, 'humidity'],
  [/temp|°|celsius|fahrenheit/, 'temperature'],
];

const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').replace(/₂/g, '2').toLowerCase();

/** A cell that holds a date, a time of day, or both. */
function momentRole(cell: string): ColumnRole | undefined {
  const found = dateParts(cell);
  if (found) return found.rest === '' ? 'date' : 'moment';
  return /^\d{1,2}:\d{2}/.test(cell) ? 'time' : undefined;
}

/** What each column holds: by its name where it has one, else by its values. Each measure is taken once. */
export function guessColumns(
  names: readonly string[],
  rows: readonly (readonly string[])[],
  decimal: DecimalMark,
): readonly ColumnRole[] {
  const width = Math.max(0, ...rows.map(({ length }) => length));
  const taken = new Set<ColumnRole>();
  const take = (role: ColumnRole): ColumnRole => {
    if (role === 'skip' || taken.has(role)) return 'skip';
    taken.add(role);
    return role;
  };
  const cells = (index: number) => rows.map((row) => row[index] ?? '').filter((cell) => !isNothing(cell));
  const byName = Array.from({ length: width }, (_, index): ColumnRole | undefined => {
    const [first = ''] = cells(index);
    const moment = momentRole(first);
    if (moment !== undefined) return take(moment);
    return named.find(([pattern]) => pattern.test(plain(names[index] ?? '')))?.[1];
  }).map((role) => (role === undefined || ['moment', 'date', 'time'].includes(role) ? role : take(role)));
  const roles = byName.map((role, index): ColumnRole => {
    if (role !== undefined) return role;
    const values = cells(index).map((cell) => readValue(cell, decimal));
    if (names.length > 0 || values.length === 0 || values.some((value) => value === undefined)) return 'skip';
    const numbers = values.filter((value) => value !== undefined);
    // A column of running numbers counts the lines.
    if (numbers.length > 2 && numbers.every((value, at) => at === 0 || value === (numbers[at - 1] ?? 0) + 1))
      return 'skip';
    if (Math.max(...numbers) > 200) return take('carbon_dioxide');
    return taken.has('temperature') ? take('humidity') : take('temperature');
  });
  return roles;
}
