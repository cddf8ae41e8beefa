import { Link } from '../../page/link';
import { errorOf, type FieldContext, textOf } from '../field-context';
import { describedBy, fieldId } from '../field-id';
import type { FieldSpec } from '../field-spec';
import { FieldFrame } from './field-frame';

type Spec = Extract<FieldSpec, { kind: 'select' }>;

export function SelectField({ spec, context }: { spec: Spec; context: FieldContext }) {
  const error = errorOf(context, spec.name);
  return (
    <FieldFrame spec={spec} context={context}>
      <select
        id={fieldId(spec.name)}
        name={spec.name}
        className="input"
        defaultValue={textOf(context, spec.name)}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={describedBy(spec.name, {
          hint: spec.hint !== undefined,
          error: error !== undefined,
        })}
      >
        <option value="">{spec.emptyLabel ?? context.words.chooseOne}</option>
        {spec.options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.hint === undefined ? option.label : `${option.label} (${option.hint})`}
          </option>
        ))}
      </select>
      {spec.notListed === undefined ? null : (
        <p className="field-other">
          <Link href={spec.notListed.href}>{spec.notListed.text}</Link>
          <span className="quiet">{spec.notListed.note}</span>
        </p>
      )}
    </FieldFrame>
  );
}
