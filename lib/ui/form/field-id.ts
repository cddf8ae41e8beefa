/** The id of a field's first input; dots would have to be escaped in selectors. */
export function fieldId(name: string): string {
  return `field-${name.replaceAll('.', '-')}`;
}

/** Ids of the hint and error that describe a field, for `aria-describedby`; undefined when it has neither. */
export function describedBy(name: string, has: { hint: boolean; error: boolean }): string | undefined {
  const ids = [has.hint ? `${fieldId(name)}-hint` : '', has.error ? `${fieldId(name)}-error` : ''];
  return ids.filter((id) => id !== '').join(' ') || undefined;
}
