'use client';

import { useActionState, useId } from 'react';
import { ErrorSummary } from './error-summary';
import type { FieldContext } from './field-context';
import { fieldNames } from './field-names';
import { emptyFormState, type FieldSpec, type FormState } from './field-spec';
import { Field } from './fields/field';
import type { FormWords } from './form-words';
import { QuestionPanel } from './question-panel';
import { unlessNoSignal } from './unless-no-signal';

type Props = {
  readonly action: (state: FormState, data: FormData) => Promise<FormState>;
  readonly label: string;
  readonly fields: readonly FieldSpec[];
  readonly submitLabel: string;
  readonly words: FormWords;
  readonly values?: FormState['values'];
  /** Where the page has another next step. */
  readonly plain?: boolean;
};

/** A form of one or two boxes in the midst of a page that is about something else; works with and without script. */
export function InlineForm({ action, label, fields, submitLabel, words, values: begin = {}, plain }: Props) {
  const [state, act, pending] = useActionState(unlessNoSignal(action, words.noSignal), emptyFormState);
  const formId = useId();
  const values = Object.keys(state.values).length > 0 ? state.values : begin;
  const context: FieldContext = { values, errors: state.errors, words };
  return (
    <form id={formId} action={act} noValidate aria-label={label} className="record-form" tabIndex={-1}>
      <ErrorSummary state={state} words={words} formId={formId} known={fieldNames(fields)} />
      <div key={JSON.stringify(values)} className="record-fields">
        {fields.map((field) => (
          <Field key={field.name} spec={field} context={context} />
        ))}
      </div>
      <QuestionPanel questions={state.questions} words={words} />
      <div className="form-end">
        <button
          type="submit"
          className={`button ${plain ? 'button-plain' : 'button-action'}`}
          aria-disabled={pending}
        >
          {pending ? words.saving : submitLabel}
        </button>
      </div>
    </form>
  );
}
