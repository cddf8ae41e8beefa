import type { FieldSpec, FormState } from './field-spec';
import { typedText } from './typed-text';

/** A field of which two versions of a record say different things. */
export type DifferingField = {
  readonly name: string;
  readonly label: string;
  readonly theirs: string;
  readonly yours: string;
};

/** Sets two fillings of a form side by side, field by field; only where they differ. The reason for a change is not compared. */
export function compareValues(
  fields: readonly FieldSpec[],
  theirs: FormState['values'],
  yours: FormState['values'],
  locale: string,
): DifferingField[] {
  return fields.flatMap((spec): DifferingField[] => {
    if (spec.kind === 'group') {
      return compareValues(spec.fields, theirs, yours, locale).map((field) => ({
        ...field,
        // A fold only hides what is seldom needed; a row of several needs its name.
        label: spec.folded ? field.label : `${spec.legend}: ${field.label}`,
      }));
    }
    if (!('label' in spec) || spec.name === 'reason') return [];
    const pair = { theirs: typedText(spec, theirs, locale), yours: typedText(spec, yours, locale) };
    return pair.theirs === pair.yours ? [] : [{ name: spec.name, label: spec.label, ...pair }];
  });
}
