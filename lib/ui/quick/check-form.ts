/**
 * The form of a check posts what was seen as `kind`; "all clean" is a look, whose command knows its day by another
 * name. Answers the same form as that command reads it.
 */
export function asLookForm(data: FormData): FormData {
  const look = new FormData();
  for (const [name, value] of data)
    if (name !== 'kind') look.append(name.replace(/^checkedOn/, 'lookedOn'), value);
  return look;
}

/** Errors of a look under the names that the form of a check has. */
export function asCheckField(field: string): string {
  return field === 'lookedOn' ? 'checkedOn' : field;
}
