import type { FieldSpec } from './field-spec';

/** The names of all fields that can hold a value, groups opened. */
export function fieldNames(fields: readonly FieldSpec[]): readonly string[] {
  return fields.flatMap((field) => {
    if (field.kind === 'group') return [field.name, ...fieldNames(field.fields)];
    return field.kind === 'caution' || field.kind === 'prose' ? [] : [field.name];
  });
}
