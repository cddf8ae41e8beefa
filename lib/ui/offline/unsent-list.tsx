'use client';

import { type ChangeEvent, useEffect, useState } from 'react';
import { readEntriesFile } from '@/lib/offline/entries-file';
import type { Outbox } from '@/lib/offline/keep-sending';
import type { KeptEntry } from '@/lib/offline/outbox-store';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import { ChangeEntry, canChange } from './change-entry';
import { EntryItem } from './entry-item';
import { counted, type OfflineWords } from './offline-words';
import { saveEntriesFile } from './save-file';

type Props = {
  readonly outbox: Outbox | undefined;
  readonly personId: string;
  readonly snapshot: ShedSnapshot | undefined;
  readonly words: OfflineWords;
};

/** Every entry that is not with the network, with what can be done about it; below it what was sent in the last day. */
export function UnsentList({ outbox, personId, snapshot, words }: Props) {
  const [entries, setEntries] = useState<readonly KeptEntry[]>();
  const [changing, setChanging] = useState<string>();
  const [said, setSaid] = useState('');
  const { keep } = words;
  useEffect(() => {
    if (!outbox) return;
    let live = true;
    const stop = outbox.follow(() => {
      void outbox.store.list().then((all) => {
        if (live) setEntries(all.filter(({ entry }) => entry.personId === personId));
      });
    });
    return () => {
      live = false;
      stop();
    };
  }, [outbox, personId]);
  if (!outbox || !entries) return <p role="status">{keep.list.loading}</p>;
  const codes = new Map(snapshot?.batches.map(({ id, code }) => [id, code]));
  const unsent = entries.filter(({ state }) => state !== 'sent');
  const sent = entries.filter(({ state }) => state === 'sent');
  const sendNow = () => void outbox.sendNow();
  const open = unsent.find(({ entry }) => entry.id === changing);
  const read = async (event: ChangeEvent<HTMLInputElement>) => {
    const [file] = event.target.files ?? [];
    if (!file) return;
    const found = readEntriesFile(await file.text(), personId);
    for (const entry of found ?? []) await outbox.store.add(entry);
    setSaid(found ? counted(keep.list.fileRead, found.length) : keep.list.fileWrong);
    event.target.value = '';
    sendNow();
  };
  if (open && snapshot)
    return (
      <>
        <ChangeEntry kept={open} outbox={outbox} snapshot={snapshot} words={words} />
        <button type="button" className="button button-plain" onClick={() => setChanging(undefined)}>
          {keep.act.back}
        </button>
      </>
    );
  return (
    <>
      {unsent.length === 0 ? (
        <>
          <p>{keep.list.none}</p>
          <p>
            <a className="button button-action" href="/quick/harvest">
              {keep.list.noneNext}
            </a>
          </p>
        </>
      ) : (
        <>
          <p>{keep.list.intro}</p>
          <div className="answers">
            <button type="button" className="button button-action" onClick={sendNow}>
              {keep.list.sendAll}
            </button>
            <button type="button" className="button button-plain" onClick={() => saveEntriesFile(unsent)}>
              {keep.list.saveFile}
            </button>
          </div>
        </>
      )}
      <ul className="entries">
        {unsent.map((kept) => (
          <EntryItem
            key={kept.entry.id}
            kept={kept}
            codes={codes}
            store={outbox.store}
            sendNow={sendNow}
            words={words}
            {...(canChange(kept) && snapshot ? { change: () => setChanging(kept.entry.id) } : {})}
          />
        ))}
      </ul>
      <p>
        <label className="file-label">
          <span className="field-label">{keep.list.readFile}</span>
          <input type="file" accept="application/json,.json" onChange={(event) => void read(event)} />
        </label>
      </p>
      <p role="status">{said}</p>
      {sent.length === 0 ? null : (
        <>
          <h2>{keep.list.sentHeading}</h2>
          <ul className="entries">
            {sent.map((kept) => (
              <EntryItem
                key={kept.entry.id}
                kept={kept}
                codes={codes}
                store={outbox.store}
                sendNow={sendNow}
                words={words}
              />
            ))}
          </ul>
        </>
      )}
    </>
  );
}
