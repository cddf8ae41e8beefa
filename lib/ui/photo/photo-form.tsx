'use client';

import { useMemo } from 'react';
import { fieldId } from '../form/field-id';
import { TextField } from '../form/fields/text-field';
import { FileForm } from '../form/file-form';
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
  const errors = useMemo(() => (error === undefined ? [] : [{ field: 'file', text: error }]), [error]);
  return (
    <FileForm
      action="/api/photos"
      heading={heading}
      intro={<p className="quiet">{words.people}</p>}
      errors={errors}
      known={['file', 'caption']}
      submitLabel={words.submit}
      words={words.form}
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
    </FileForm>
  );
}
