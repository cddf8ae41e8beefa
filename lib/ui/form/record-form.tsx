'use client';

import dynamic from 'next/dynamic';
import { type ReactNode, useActionState, useId } from 'react';
import { ErrorSummary } from './error-summary';
import type { FieldContext } from './field-context';
import { fieldNames } from './field-names';
import { emptyFormState, type FieldSpec, type FormState } from './field-spec';
import { Field } from './fields/field';
import type { FormWords } from './form-words';
import { QuestionPanel } from './question-panel';
import { SendingLine } from './sending-line';
import { unlessNoSignal } from './unless-no-signal';

/** A chunk of its own: hardly any form meets a conflict. */
const ConflictPanel = dynamic(() => import('./conflict-panel').then((panel) => panel.ConflictPanel));

type Props = {
  readonly action: (state: FormState, data: FormData) => Promise<FormState>;
  /** The page's h1 and title: the summary of errors has to stand above it. */
  readonly heading: string;
  readonly fields: readonly FieldSpec[];
  readonly submitLabel: string;
  readonly words: FormWords;
  /** What the boxes hold before anything was posted. */
  readonly values?: FormState['values'];
  /** Colours the button as a step that takes something away. */
  readonly tone?: 'action' | 'bad';
  /** Shown between heading and fields. */
  readonly children?: ReactNode;
  /** Shown after the button, for instance a link that leaves the form. */
  readonly after?: ReactNode;
};

/**
 * A form that works with and without script: the server checks, the answer comes back with everything typed, a
 * summary that takes the focus, and a link to every field.
 */
export function RecordForm(props: Props) {
  const { fields, words, heading } = props;
  const [state, act, pending] = useActionState(unlessNoSignal(props.action, words.noSignal), emptyFormState);
  const formId = useId();
  const posted = Object.keys(state.values).length > 0;
  const values = posted ? state.values : (props.values ?? {});
  const context: FieldContext = { values, errors: state.errors, words };
  const failed = state.errors.length > 0;
  return (
    <>
      <title>{`${failed ? `${words.errorPrefix} ` : ''}${heading} – ${words.product}`}</title>
      <ErrorSummary state={state} words={words} formId={formId} known={fieldNames(fields)} />
      <h1>{heading}</h1>
      {state.notice === undefined ? null : (
        <p className="notice" role="status">
          {state.notice}
          {state.shownOnce === undefined ? null : <code className="shown-once">{state.shownOnce}</code>}
        </p>
      )}
      {props.children}
      {state.conflict === undefined ? null : (
        <ConflictPanel
          sentence={state.conflict}
          fields={fields}
          theirs={props.values ?? {}}
          yours={values}
          words={words}
        />
      )}
      <form id={formId} action={act} noValidate className="record-form" tabIndex={-1}>
        {/* React empties a form after its action; new keys make the boxes start from what was posted. */}
        <div key={JSON.stringify(values)} className="record-fields">
          {fields.map((field) => (
            <Field key={field.name} spec={field} context={context} />
          ))}
        </div>
        <QuestionPanel questions={state.questions} words={words} />
        <div className="form-end">
          <button type="submit" className={`button button-${props.tone ?? 'action'}`} aria-disabled={pending}>
            {pending ? words.saving : state.conflict === undefined ? props.submitLabel : words.useMine}
          </button>
          {props.after}
        </div>
        <SendingLine pending={pending} saving={words.saving} />
      </form>
    </>
  );
}
