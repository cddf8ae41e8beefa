import type { ReactNode } from 'react';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { errorOf, type FieldContext } from '../field-context';
import { describedBy, fieldId } from '../field-id';
import { FieldError } from './field-error';

type Props = {
  readonly spec: {
    readonly name: string;
    readonly label: string;
    readonly hint?: string;
    readonly optional?: boolean;
  };
  readonly context: FieldContext;
  readonly children: ReactNode;
};

/** Legend, hint and error of a field made of several inputs: a date, radio buttons, tick boxes. */
export function FieldSet({ spec, context, children }: Props) {
  const id = fieldId(spec.name);
  const error = errorOf(context, spec.name);
  return (
    <fieldset
      className={error === undefined ? 'field' : 'field field-wrong'}
      aria-describedby={describedBy(spec.name, { hint: spec.hint !== undefined, error: error !== undefined })}
    >
      <legend className="field-label">
        {sentenceCase(spec.label)}
        {spec.optional ? <span className="quiet"> {context.words.optional}</span> : null}
      </legend>
      {spec.hint === undefined ? null : (
        <p id={`${id}-hint`} className="field-hint">
          {spec.hint}
        </p>
      )}
      <FieldError name={spec.name} text={error} words={context.words} />
      {children}
    </fieldset>
  );
}
