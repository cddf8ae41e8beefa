'use client';

import { useId } from 'react';
import { ErrorSummary } from '../form/error-summary';
import { fieldId } from '../form/field-id';
import { TextField } from '../form/fields/text-field';
import type { FormWords } from '../form/form-words';
import { PhotoPicker } from './photo-picker';

type Props = {
  readonly heading: string;
  readonly batchId: string;
  readonly findingId: string;
  readonly photoId: string;
  readonly words: {
    readonly file: string;
    readonly caption: string;
    readonly hint: string;
    readonly people: string;
    readonly working: string;
    readonly submit: string;
    readonly form: FormWords;
  };
  readonly error?: string;
};

/** The form of a picture; works without script, which only makes the picture small before it is sent. */
export function PhotoForm({ heading, batchId, findingId, photoId, words, error }: Props) {
  const formId = useId();
  const errors = error === undefined ? [] : [{ field: 'file', text: error }];
  const title = `${error === undefined ? '' : `${words.form.errorPrefix} `}${heading} – ${words.form.product}`;
  return (
    <>
      <title>{title}</title>
      <ErrorSummary
        state={{ values: {}, errors, questions: [] }}
        words={words.form}
        formId={formId}
        known={['file', 'caption']}
      />
      <h1>{heading}</h1>
      <p className="quiet">{words.people}</p>
      <form
        id={formId}
        action="/api/photos"
        method="post"
        encType="multipart/form-data"
        noValidate
        className="record-form"
        tabIndex={-1}
      >
        <input type="hidden" name="id" value={photoId} />
        <input type="hidden" name="batchId" value={batchId} />
        <input type="hidden" name="findingId" value={findingId} />
        <div className="record-fields">
          <PhotoPicker
            id={fieldId('file')}
            label={words.file}
            hint={words.hint}
            working={words.working}
            {...(error === undefined ? {} : { error })}
          />
          <TextField
            spec={{ kind: 'text', name: 'caption', label: words.caption, optional: true }}
            context={{ values: {}, errors: [], words: words.form }}
          />
        </div>
        <div className="form-end">
          <button type="submit" className="button button-action">
            {words.submit}
          </button>
        </div>
      </form>
    </>
  );
}
