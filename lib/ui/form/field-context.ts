import type { FormState } from './field-spec';
import type { FormWords } from './form-words';

/** What every field reads: the strings to start from, the sentence about it if it failed, and the form's words. */
export type FieldContext = {
  readonly values: FormState['values'];
  readonly errors: FormState['errors'];
  readonly words: FormWords;
};

/** The one string of a field, '' when there is none. */
export function textOf(context: FieldContext, name: string): string {
  const value = context.values[name];
  return typeof value === 'string' ? value : (value?.[0] ?? '');
}

/** All strings of a field that may have several. */
export function textsOf(context: FieldContext, name: string): readonly string[] {
  const value = context.values[name];
  if (value === undefined || value === '') return [];
  return typeof value === 'string' ? [value] : value;
}

export function errorOf(context: FieldContext, name: string): string | undefined {
  return context.errors.find((error) => error.field === name)?.text;
}
