import { errorOf, type FieldContext, textOf } from '../field-context';
import { describedBy, fieldId } from '../field-id';
import type { FieldSpec } from '../field-spec';
import { FieldFrame } from './field-frame';

type Spec = Extract<FieldSpec, { kind: 'text' | 'email' | 'password' }>;

export function TextField({ spec, context }: { spec: Spec; context: FieldContext }) {
  const error = errorOf(context, spec.name);
  const short = spec.kind === 'text' && spec.width === 'short';
  return (
    <FieldFrame spec={spec} context={context}>
      <input
        id={fieldId(spec.name)}
        name={spec.name}
        type={spec.kind}
        className={short ? 'input input-short' : 'input'}
        defaultValue={spec.kind === 'password' ? '' : textOf(context, spec.name)}
        autoComplete={spec.autoComplete ?? 'off'}
        autoCapitalize={spec.kind === 'text' ? undefined : 'none'}
        spellCheck={spec.kind === 'text' ? undefined : false}
        aria-invalid={error === undefined ? undefined : true}
        aria-describedby={describedBy(spec.name, {
          hint: spec.hint !== undefined,
          error: error !== undefined,
        })}
      />
    </FieldFrame>
  );
}
