'use client';

import { useEffect, useState } from 'react';
import { keepSnapshot } from '@/lib/offline/keep-snapshot';
import { emptySummary } from '@/lib/offline/outbox-summary';
import { counted, type KeepWords } from './offline-words';
import { useOutbox } from './use-outbox';

type Props = {
  readonly personId: string;
  readonly networkId: string;
  readonly words: KeepWords['status'];
  /** The built product keeps its pages for no signal; the development server reloads them all the time. */
  readonly worker: boolean;
};

const snapshotMilliseconds = 10 * 60_000;

async function askToStay(): Promise<void> {
  // A browser may clear what it was not asked to keep; that it was asked is remembered by the browser itself.
  if (navigator.storage?.persisted && !(await navigator.storage.persisted()))
    await navigator.storage.persist();
}

/**
 * Keeps the phone ready for no signal, and says at all times how many entries are not sent: in sight on every page, and
 * read aloud when the number changes.
 */
export function PhoneKeeper({ personId, networkId, words, worker }: Props) {
  const outbox = useOutbox(personId, networkId);
  const [summary, setSummary] = useState(emptySummary);
  useEffect(() => outbox?.follow(setSummary), [outbox]);
  useEffect(() => {
    if (!outbox) return;
    let last = 0;
    const keep = () => {
      if (document.visibilityState === 'hidden' || Date.now() - last < snapshotMilliseconds) return;
      last = Date.now();
      void keepSnapshot(personId);
    };
    keep();
    document.addEventListener('visibilitychange', keep);
    const stop = outbox.afterSent(() => void keepSnapshot(personId));
    return () => {
      document.removeEventListener('visibilitychange', keep);
      stop();
    };
  }, [outbox, personId]);
  useEffect(() => {
    if (!worker || !('serviceWorker' in navigator)) return;
    void navigator.serviceWorker
      .register('/sw.js', { scope: '/', updateViaCache: 'none' })
      .then(askToStay, (error: unknown) => console.warn('pages for no signal are not kept', error));
  }, [worker]);
  const { unsent, needYou, others, signIn } = summary;
  return (
    <div className="phone-keeper" role="status">
      {unsent === 0 ? null : (
        <p>
          <a href="/unsent" className={needYou > 0 ? 'unsent unsent-needs-you' : 'unsent'}>
            {needYou > 0 ? counted(words.needYou, needYou) : counted(words.unsent, unsent)}
          </a>
          {signIn ? <a href="/sign-in">{words.signIn}</a> : null}
        </p>
      )}
      {others === 0 ? null : <p className="quiet">{counted(words.others, others)}</p>}
    </div>
  );
}
