/** What a date field holds for a stored calendar date: the three parts, with "another day" chosen. */
export function dateValues(name: string, date: string | null): Record<string, string> {
  if (date === null) return {};
  const [year = '', month = '', day = ''] = date.split('-');
  return {
    [`${name}__quick`]: 'other',
    [`${name}__day`]: String(Number(day)),
    [`${name}__month`]: String(Number(month)),
    [`${name}__year`]: year,
  };
}
