const monthNames = [
  ['january', 'jan', 'enero', 'ene'],
  ['february', 'feb', 'febrero'],
  ['march', 'mar', 'marzo'],
  ['april', 'apr', 'abril', 'abr'],
  ['may', 'mayo'],
  ['june', 'jun', 'junio'],
  ['july', 'jul', 'julio'],
  ['august', 'aug', 'agosto', 'ago'],
  ['september', 'sep', 'sept', 'septiembre', 'setiembre'],
  ['october', 'oct', 'octubre'],
  ['november', 'nov', 'noviembre'],
  ['december', 'dec', 'diciembre', 'dic'],
] as const;

/** Month 1-12 from a number or a name in English or Spanish; undefined when it is neither. */
export function monthOf(text: string): number | undefined {
  const word = text.trim().toLowerCase().replace(/\.$/, '');
  if (/^\d{1,2}$/.test(word)) return Number(word);
  const index = monthNames.findIndex((names) => (names as readonly string[]).includes(word));
  return index < 0 ? undefined : index + 1;
}

/** 'YYYY-MM-DD' when the three parts are a real date of the years 1950-2100; undefined otherwise. */
export function isoDateOf(day: string, month: string, year: string): string | undefined {
  const monthNumber = monthOf(month);
  if (!/^\d{1,2}$/.test(day.trim()) || monthNumber === undefined || !/^\d{4}$/.test(year.trim()))
    return undefined;
  const y = Number(year);
  const d = Number(day);
  const date = new Date(Date.UTC(y, monthNumber - 1, d));
  const real = y >= 1950 && y <= 2100 && date.getUTCMonth() === monthNumber - 1 && date.getUTCDate() === d;
  return real ? date.toISOString().slice(0, 10) : undefined;
}
