import type { FormState } from './field-spec';

/** Everything typed, to be shown again; passwords are the one exception. */
export function postedValues(data: FormData): FormState['values'] {
  const values: Record<string, string | string[]> = {};
  for (const name of new Set(data.keys())) {
    if (name.startsWith('$ACTION') || name === 'confirmed' || /password/i.test(name)) continue;
    const texts = data.getAll(name).filter((value): value is string => typeof value === 'string');
    values[name] = texts.length > 1 ? texts : (texts[0] ?? '');
  }
  return values;
}
