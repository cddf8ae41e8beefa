'use client';

import { type ReactNode, useActionState, useId } from 'react';
import { todayInZone } from '@/lib/growing/calendar-date';
import { ErrorSummary } from '../form/error-summary';
import { errorOf, type FieldContext } from '../form/field-context';
import { emptyFormState, type FormState } from '../form/field-spec';
import { QuestionPanel } from '../form/question-panel';
import { unlessNoSignal } from '../form/unless-no-signal';
import { AskPanel } from './ask-panel';
import { BatchPicker } from './batch-picker';
import { fillPlaces } from './fill-places';
import { likelyBatches, type QuickKind } from './likely-batches';
import type { QuickProps } from './quick-props';
import { SavedPanel } from './saved-panel';
import type { QuickEntryState } from './use-quick-entry';

type Props = {
  readonly props: QuickProps;
  readonly kind: QuickKind;
  readonly entry: QuickEntryState;
  readonly batchField: string;
  readonly dayField: string;
  readonly words: {
    readonly heading: string;
    readonly from: string;
    readonly submit: string;
    readonly again: string;
    readonly another: string;
  };
  /** Names of the form's other fields, for the links of the summary. */
  readonly known: readonly string[];
  readonly defaults: FormState['values'];
  /** The fields between batch and button; `today` is the day at the batch's site. */
  readonly children: (context: FieldContext, today: string) => ReactNode;
  /** What stands after the button. */
  readonly after: ReactNode;
};

const noAction = async (state: FormState) => state;

/** The frame of a quick entry: batch, fields, one button, then what became of it. Posts as a form without script. */
export function QuickEntry({ props, kind, entry, batchField, dayField, words, ...parts }: Props) {
  const { snapshot, words: all } = props;
  const [state, act, pending] = useActionState(
    unlessNoSignal(props.action ?? noAction, all.form.noSignal),
    emptyFormState,
  );
  const formId = useId();
  const { batch, kept } = entry;
  const title = batch ? fillPlaces(words.from, { code: batch.code }) : words.heading;
  if (kept)
    return (
      <SavedPanel
        kept={kept}
        words={all}
        again={words.again}
        another={words.another}
        next={entry.next}
        undo={entry.undo}
      >
        {props.afterKept?.(kept.entry)}
      </SavedPanel>
    );
  const zone = (batch ?? snapshot.batches[0])?.timeZone ?? 'UTC';
  const today = todayInZone(zone, entry.clock);
  const posted = Object.keys(state.values).length > 0;
  const values = posted
    ? state.values
    : { [`${dayField}__quick`]: today, ...parts.defaults, ...props.values };
  const errors = entry.problems.length > 0 ? entry.problems : state.errors;
  const context: FieldContext = { values, errors, words: all.form };
  const known = [batchField, dayField, ...parts.known];
  return (
    <>
      <title>{`${errors.length > 0 ? `${all.form.errorPrefix} ` : ''}${title} – ${all.form.product}`}</title>
      <ErrorSummary
        state={{ values, errors, questions: [] }}
        words={all.form}
        formId={formId}
        known={known}
      />
      <h1 tabIndex={-1}>{title}</h1>
      {props.batchId !== undefined && !snapshot.batches.some(({ id }) => id === props.batchId) ? (
        <p className="notice notice-watch" role="status">
          {all.batch.notOpen}
        </p>
      ) : null}
      <form
        id={formId}
        ref={entry.form}
        {...(props.action ? { action: act } : {})}
        onSubmit={entry.submit}
        onInput={entry.refresh}
        noValidate
        className="record-form quick-form"
        tabIndex={-1}
      >
        <input type="hidden" name="id" value={entry.id} />
        {/* React empties a form after its action; new keys make the boxes start from what was posted. */}
        <div key={`${entry.id}${posted ? JSON.stringify(values) : ''}`} className="record-fields">
          <BatchPicker
            name={batchField}
            batches={likelyBatches(entry.batches, kind, snapshot.due, today)}
            chosen={entry.batchId}
            choose={entry.choose}
            words={all}
            person={snapshot.person}
            error={errorOf(context, batchField)}
          />
          {parts.children(context, today)}
        </div>
        <AskPanel
          questions={entry.questions}
          words={all.ask}
          yes={() => entry.save(entry.questions.map(({ code }) => code))}
          no={entry.change}
        />
        <QuestionPanel questions={state.questions} words={all.form} />
        <div className="form-end">
          <button type="submit" className="button button-action" aria-disabled={pending}>
            {pending ? all.form.saving : words.submit}
          </button>
        </div>
      </form>
      {parts.after}
    </>
  );
}
