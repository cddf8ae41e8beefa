'use client';

import { newId } from '@/lib/base/new-id';
import type { Entry, EntryAnswer } from '@/lib/offline/entry';
import type { KeptEntry, OutboxStore } from '@/lib/offline/outbox-store';
import { VersionsTable } from '../form/versions-table';
import type { KeepWords } from './offline-words';

type Props = {
  readonly kept: KeptEntry;
  readonly answer: Exclude<EntryAnswer, { kind: 'saved' }>;
  readonly store: OutboxStore;
  readonly sendNow: () => void;
  readonly words: KeepWords;
};

/** What the server said of an entry, and the answers to it: yes, mine, theirs. */
export function EntryAnswerPanel({ kept, answer, store, sendNow, words }: Props) {
  const { entry } = kept;
  const again = async (change: Partial<Entry>) => {
    if (await store.replace(entry.id, entry.key, { ...entry, ...change, key: newId() })) sendNow();
  };
  switch (answer.kind) {
    case 'refused':
      return (
        <ul className="entry-said">
          {answer.errors.map(({ field, text }) => (
            <li key={`${field} ${text}`}>{text}</li>
          ))}
        </ul>
      );
    case 'asked':
      return (
        <>
          {answer.questions.map(({ code, text }) => (
            <p key={code}>{text}</p>
          ))}
          <button
            type="button"
            className="button button-plain"
            onClick={() =>
              void again({
                confirmed: [...entry.confirmed, ...answer.questions.map(({ code }) => code)],
              })
            }
          >
            {words.act.yes}
          </button>
        </>
      );
    case 'conflict':
      return (
        <>
          <VersionsTable
            words={{ field: words.act.field, theirs: words.act.theirsColumn, yours: words.act.mineColumn }}
            rows={answer.fields.map((field) => ({ key: field.label, ...field }))}
          />
          <div className="answers">
            <button
              type="button"
              className="button button-plain"
              onClick={() => void store.remove(entry.id, entry.key)}
            >
              {words.act.theirs}
            </button>
            <button
              type="button"
              className="button button-plain"
              onClick={() => void again({ input: { ...entry.input, revision: answer.revision } })}
            >
              {words.act.mine}
            </button>
          </div>
        </>
      );
  }
}
