'use client';

import { type ChangeEvent, useState } from 'react';
import { keepPicture, type PictureOf } from '@/lib/offline/keep-picture';
import type { QuickOutbox } from '@/lib/offline/quick-outbox';

export type PhotoAfterWords = {
  readonly takePhoto: string;
  readonly kept: string;
  readonly keptNot: string;
  readonly working: string;
  readonly people: string;
};

type Props = { readonly outbox: QuickOutbox; readonly of: PictureOf; readonly words: PhotoAfterWords };

/** After an entry is kept: a picture of it, kept on the phone too and sent after it. */
export function PhotoAfter({ outbox, of, words }: Props) {
  const [said, setSaid] = useState('');
  const keep = async (event: ChangeEvent<HTMLInputElement>) => {
    const box = event.target;
    const [file] = box.files ?? [];
    if (!file) return;
    setSaid(words.working);
    try {
      await keepPicture(outbox, file, of);
      setSaid(words.kept);
    } catch {
      setSaid(words.keptNot);
    }
    box.value = '';
  };
  return (
    <div className="field">
      <label className="file-label">
        <span className="field-label">{words.takePhoto}</span>
        <span className="field-hint">{words.people}</span>
        <input type="file" accept="image/*" capture="environment" onChange={(event) => void keep(event)} />
      </label>
      <p role="status">{said}</p>
    </div>
  );
}
