'use client';

import { type ChangeEvent, useState } from 'react';
import { shrinkPhoto } from '@/lib/offline/shrink-photo';

type Props = {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  readonly working: string;
  readonly error?: string;
};

/** The box for a picture. With script it is made small before it is sent; without, it is sent as it is. */
export function PhotoPicker({ id, label, hint, working, error }: Props) {
  const [busy, setBusy] = useState(false);
  const shrink = async (event: ChangeEvent<HTMLInputElement>) => {
    const box = event.target;
    const [file] = box.files ?? [];
    if (!file) return;
    setBusy(true);
    try {
      const small = await shrinkPhoto(file);
      const picked = new DataTransfer();
      picked.items.add(new File([small], 'photo.jpg', { type: small.type }));
      box.files = picked.files;
    } finally {
      setBusy(false);
    }
  };
  return (
    <div className={error === undefined ? 'field' : 'field field-wrong'}>
      <label htmlFor={id} className="field-label">
        {label}
      </label>
      <p id={`${id}-hint`} className="field-hint">
        {hint}
      </p>
      {error === undefined ? null : (
        <p id={`${id}-error`} className="field-error">
          {error}
        </p>
      )}
      <span className="file-label">
        <input
          id={id}
          type="file"
          name="file"
          accept="image/*"
          aria-invalid={error === undefined ? undefined : true}
          aria-describedby={error === undefined ? `${id}-hint` : `${id}-hint ${id}-error`}
          onChange={(event) => void shrink(event)}
        />
      </span>
      <p role="status">{busy ? working : ''}</p>
    </div>
  );
}
