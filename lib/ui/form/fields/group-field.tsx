import type { ReactNode } from 'react';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { errorOf, type FieldContext } from '../field-context';
import { describedBy, fieldId } from '../field-id';
import { fieldNames } from '../field-names';
import type { FieldSpec } from '../field-spec';
import { FieldError } from './field-error';

type Props = {
  readonly spec: Extract<FieldSpec, { kind: 'group' }>;
  readonly context: FieldContext;
  readonly children: ReactNode;
};

/** Fields that belong together. A folded group opens by itself when one of its fields failed or holds something. */
export function GroupField({ spec, context, children }: Props) {
  const id = fieldId(spec.name);
  const error = errorOf(context, spec.name);
  const hint =
    spec.hint === undefined ? null : (
      <p id={`${id}-hint`} className="field-hint">
        {spec.hint}
      </p>
    );
  if (spec.folded) {
    return (
      <details className="group-folded" open={holdsSomething(spec.fields, context)}>
        <summary id={id}>{sentenceCase(spec.legend)}</summary>
        <fieldset className="group">
          <legend className="visually-hidden">{sentenceCase(spec.legend)}</legend>
          {hint}
          <FieldError name={spec.name} text={error} words={context.words} />
          {children}
        </fieldset>
      </details>
    );
  }
  return (
    <fieldset
      id={id}
      tabIndex={-1}
      className="group"
      aria-describedby={describedBy(spec.name, { hint: spec.hint !== undefined, error: error !== undefined })}
    >
      <legend className="group-legend">{sentenceCase(spec.legend)}</legend>
      {hint}
      <FieldError name={spec.name} text={error} words={context.words} />
      {children}
    </fieldset>
  );
}

/** Whether a folded group must be open: for an error, or for something typed; a choice that is merely preset is not. */
function holdsSomething(fields: readonly FieldSpec[], context: FieldContext): boolean {
  const wrong = (name: string) => context.errors.some((error) => error.field === name);
  const typed = fields.filter(({ kind }) => kind !== 'radio' && kind !== 'hidden');
  return (
    fieldNames(fields).some(wrong) ||
    fieldNames(typed).some((name) => (context.values[name] ?? '').length > 0)
  );
}
