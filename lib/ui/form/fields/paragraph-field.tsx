import { errorOf, type FieldContext, textOf } from '../field-context';
import { describedBy, fieldId } from '../field-id';
import type { FieldSpec } from '../field-spec';
import { FieldFrame } from './field-frame';

type Spec = Extract<FieldSpec, { kind: 'paragraph' }>;

export function ParagraphField({ spec, context }: { spec: Spec; context: FieldContext }) {
  const error = errorOf(context, spec.name);
  return (
    <FieldFrame spec={spec} context={context}>
      <textarea
        id={fieldId(spec.name)}
        name={spec.name}
        rows={3}
        className="input"
        defaultValue={textOf(context, spec.name)}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={describedBy(spec.name, {
          hint: spec.hint !== undefined,
          error: error !== undefined,
        })}
      />
    </FieldFrame>
  );
}
