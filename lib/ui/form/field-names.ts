import type { FieldSpec } from './field-spec';

/** Parts of a form that hold no value. */
const noField: ReadonlySet<FieldSpec['kind']> = new Set(['caution', 'prose', 'link', 'sums']);

/** The names of all fields that can hold a value, groups opened. */
export function fieldNames(fields: readonly FieldSpec[]): readonly string[] {
  return fields.flatMap((field) => {
    if (field.kind === 'group') return [field.name, ...fieldNames(field.fields)];
    return noField.has(field.kind) ? [] : [field.name];
  });
}
