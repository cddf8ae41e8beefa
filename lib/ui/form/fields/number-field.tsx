import { errorOf, type FieldContext, textOf } from '../field-context';
import { describedBy, fieldId } from '../field-id';
import type { FieldSpec } from '../field-spec';
import { FieldFrame } from './field-frame';

type Spec = Extract<FieldSpec, { kind: 'whole' | 'decimal' }>;

/** A number as text: a number input would drop what it cannot read and change its value when scrolled over. */
export function NumberField({ spec, context }: { spec: Spec; context: FieldContext }) {
  const error = errorOf(context, spec.name);
  const label = spec.suffix === undefined ? spec.label : `${spec.label} (${spec.suffix})`;
  return (
    <FieldFrame spec={{ ...spec, label }} context={context}>
      <span className="input-row">
        <input
          id={fieldId(spec.name)}
          name={spec.name}
          type="text"
          inputMode={spec.kind === 'whole' ? 'numeric' : 'decimal'}
          className="input input-number"
          defaultValue={textOf(context, spec.name)}
          autoComplete="off"
          aria-invalid={error === undefined ? undefined : true}
          aria-describedby={describedBy(spec.name, {
            hint: spec.hint !== undefined,
            error: error !== undefined,
          })}
        />
        {spec.suffix === undefined ? null : (
          <span className="suffix" aria-hidden="true">
            {spec.suffix}
          </span>
        )}
      </span>
    </FieldFrame>
  );
}
