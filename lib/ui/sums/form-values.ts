import type { FormState } from '../form/field-spec';

/** The strings that a form would post now, by name; a name posted several times has a list. */
export function formValues(form: HTMLFormElement): FormState['values'] {
  const data = new FormData(form);
  const values: Record<string, string | string[]> = {};
  for (const name of new Set(data.keys())) {
    const texts = data.getAll(name).filter((value): value is string => typeof value === 'string');
    values[name] = texts.length > 1 ? texts : (texts[0] ?? '');
  }
  return values;
}
