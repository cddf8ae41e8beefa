import { fieldNames } from './field-names';
import type { FieldSpec, FormState } from './field-spec';

type Address = Readonly<Record<string, string | string[] | undefined>>;

const mostLetters = 500;

/**
 * What an address puts into the boxes of a form: only names of its own fields and their companions (`mass__unit`), as
 * text. The person sees it before anything is saved, and the command reads it as if typed.
 */
export function addressValues(fields: readonly FieldSpec[], address: Address): FormState['values'] {
  const known = new Set(fieldNames(fields));
  const entries = Object.entries(address).flatMap(([name, value]) => {
    const [field = ''] = name.split('__');
    const text = Array.isArray(value) ? value[0] : value;
    return known.has(field) && text !== undefined ? [[name, text.slice(0, mostLetters)] as const] : [];
  });
  return Object.fromEntries(entries);
}
