'use client';

import { useState } from 'react';
import type { KeptEntry, OutboxStore } from '@/lib/offline/outbox-store';
import { fillPlaces } from '../quick/fill-places';
import { describeEntry } from './describe-entry';
import { EntryAnswerPanel } from './entry-answer';
import { entryStateText } from './entry-state';
import type { OfflineWords } from './offline-words';
import { saveEntriesFile } from './save-file';

type Props = {
  readonly kept: KeptEntry;
  readonly codes: ReadonlyMap<string, string>;
  readonly store: OutboxStore;
  readonly sendNow: () => void;
  readonly words: OfflineWords;
  /** Opens the entry's form; undefined where an entry of this kind cannot be changed. */
  readonly change?: () => void;
};

/** One entry in words, where it stands, and what the person can do about it. */
export function EntryItem({ kept, codes, store, sendNow, words, change }: Props) {
  const [asking, setAsking] = useState(false);
  const { keep } = words;
  const { entry, state, trouble } = kept;
  const open = state === 'waiting' || state === 'needs-you';
  const discard = () => void store.remove(entry.id, entry.key);
  const made = new Date(entry.madeAt).toLocaleString(keep.locale, {
    day: 'numeric',
    month: 'short',
    hour: 'numeric',
    minute: '2-digit',
  });
  return (
    <li className={`entry entry-${state}`}>
      <p className="entry-text">{describeEntry(entry, codes, words)}</p>
      <p className="quiet">
        <strong>{entryStateText(kept, keep.state)}</strong> · {fillPlaces(keep.list.made, { when: made })}
      </p>
      {trouble?.answer ? (
        <EntryAnswerPanel kept={kept} answer={trouble.answer} store={store} sendNow={sendNow} words={keep} />
      ) : null}
      {!open || asking ? null : (
        <div className="answers">
          {change && state === 'needs-you' ? (
            <button type="button" className="button button-plain" onClick={change}>
              {keep.act.change}
            </button>
          ) : null}
          <button type="button" className="button button-plain" onClick={() => setAsking(true)}>
            {keep.act.discard}
          </button>
        </div>
      )}
      {asking && open ? (
        <div className="question-panel" role="alert">
          <p>{keep.act.discardAsk}</p>
          <div className="answers">
            <button type="button" className="button button-action" onClick={() => setAsking(false)}>
              {keep.act.keep}
            </button>
            <button
              type="button"
              className="button button-plain"
              onClick={() => {
                saveEntriesFile([kept]);
                discard();
              }}
            >
              {keep.act.discardSave}
            </button>
            <button type="button" className="button button-bad" onClick={discard}>
              {keep.act.discardYes}
            </button>
          </div>
        </div>
      ) : null}
    </li>
  );
}
