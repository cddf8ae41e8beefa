'use client';

import { useActionState, useId, useMemo } from 'react';
import { ErrorSummary } from '../form/error-summary';
import { Field } from '../form/fields/field';
import type { FormWords } from '../form/form-words';
import { sendKept } from '../form/send-kept';
import { unlessNoAnswer } from '../form/unless-no-answer';
import { DataTable } from '../table/data-table';
import { emptyImport, type ImportState } from './import-state';

export type ImportWords = {
  readonly heading: string;
  readonly text: string;
  readonly textHint: string;
  readonly file: string;
  readonly look: string;
  readonly lookAgain: string;
  readonly save: string;
  readonly found: string;
  readonly written: string;
  readonly firstLines: string;
  readonly problems: string;
  readonly other: string;
};

type Props = {
  readonly action: (state: ImportState, data: FormData) => Promise<ImportState>;
  readonly id: string;
  readonly placeId: string;
  readonly path: string;
  readonly words: ImportWords;
  readonly formWords: FormWords;
};

/** Pasting or choosing a table, then looking at how it was understood, then taking it in. Works without script. */
export function ImportForm({ action, id, placeId, path, words, formWords }: Props) {
  const [state, act, pending] = useActionState(
    unlessNoAnswer(action, ({ table }) => ({ table, errors: [{ field: '', text: formWords.noSignal }] })),
    emptyImport,
  );
  const formId = useId();
  const { table, errors } = state;
  const summary = useMemo(() => ({ values: {}, errors: state.errors, questions: [] }), [state]);
  return (
    <>
      <title>{`${errors.length > 0 ? `${formWords.errorPrefix} ` : ''}${words.heading} – ${formWords.product}`}</title>
      <ErrorSummary state={summary} words={formWords} formId={formId} known={['text']} />
      <h1>{words.heading}</h1>
      <form
        id={formId}
        action={act}
        onSubmit={sendKept(act)}
        noValidate
        className="record-form"
        tabIndex={-1}
      >
        <input type="hidden" name="id" value={id} />
        <input type="hidden" name="placeId" value={placeId} />
        {table === null ? (
          <div className="record-fields">
            <div className="field">
              <label className="field-label" htmlFor="field-text">
                {words.text}
              </label>
              <p className="field-hint" id="text-hint">
                {words.textHint}
              </p>
              <textarea
                id="field-text"
                name="text"
                rows={8}
                className="input"
                spellCheck={false}
                aria-describedby="text-hint"
              />
            </div>
            <div className="field">
              <label className="field-label" htmlFor="field-file">
                {words.file}
              </label>
              <input
                id="field-file"
                name="file"
                type="file"
                accept=".csv,.txt,.tsv,text/*"
                className="input"
              />
            </div>
          </div>
        ) : (
          <>
            <input type="hidden" name="text" value={table.text} />
            <h2>{words.found}</h2>
            {table.found.map((line) => (
              <p key={line}>{line}</p>
            ))}
            {table.problems.length === 0 ? null : (
              <>
                <h3>{words.problems}</h3>
                <ul>
                  {table.problems.map((line) => (
                    <li key={line}>{line}</li>
                  ))}
                </ul>
              </>
            )}
            <DataTable
              caption={words.firstLines}
              rows={table.rows}
              rowKey={({ key }) => key}
              columns={table.columns.map(({ key, name }) => ({
                key,
                header: name,
                cell: ({ cells }: (typeof table.rows)[number]) => cells[key],
              }))}
            />
            <h2>{words.written}</h2>
            <div key={JSON.stringify(table.values)} className="record-fields">
              {table.fields.map((field) => (
                <Field
                  key={field.name}
                  spec={field}
                  context={{ values: table.values, errors, words: formWords }}
                />
              ))}
            </div>
          </>
        )}
        <div className="form-end">
          {table !== null && table.problems.length === 0 ? (
            <button
              type="submit"
              name="step"
              value="save"
              className="button button-action"
              aria-disabled={pending}
            >
              {pending ? formWords.saving : words.save}
            </button>
          ) : null}
          <button
            type="submit"
            name="step"
            value="look"
            className={`button ${table === null ? 'button-action' : 'button-plain'}`}
            aria-disabled={pending}
          >
            {table === null ? words.look : words.lookAgain}
          </button>
          {table === null ? null : <a href={path}>{words.other}</a>}
        </div>
        <p className="visually-hidden" role="status">
          {pending ? formWords.saving : ''}
        </p>
      </form>
    </>
  );
}
