'use client';

import { type FormEvent, type ReactNode, useRef, useState } from 'react';
import { outboxOf } from '@/lib/offline/keep-sending';
import { leavePhone } from '@/lib/offline/leave-phone';
import { serverAnswers } from '@/lib/offline/server-answers';
import { counted, type KeepWords } from './offline-words';
import { saveEntriesFile } from './save-file';

type Props = {
  readonly personId: string;
  readonly networkId: string;
  readonly action: (data: FormData) => Promise<void>;
  readonly words: KeepWords;
  readonly children: ReactNode;
};

type Asked = { readonly unsent: number; readonly tried: boolean; readonly button: HTMLElement | null };

/**
 * The form that signs out: with unsent entries it stops and asks; without any it wipes the phone's copy first. Where no server
 * answers nobody is signed out, and the phone keeps what it needs to go on.
 */
export function SignOutGuard({ personId, networkId, action, words, children }: Props) {
  const form = useRef<HTMLFormElement>(null);
  const cleared = useRef(false);
  const [asked, setAsked] = useState<Asked>();
  const [noSignal, setNoSignal] = useState(false);

  const unsentEntries = async () =>
    (await outboxOf(personId, networkId).store.list()).filter(
      ({ entry, state }) => entry.personId === personId && state !== 'sent',
    );

  const leave = async (button: HTMLElement | null) => {
    const reached = await serverAnswers();
    setNoSignal(!reached);
    if (!reached) return;
    try {
      await leavePhone(personId);
    } finally {
      cleared.current = true;
      form.current?.requestSubmit(button);
    }
  };

  const submit = (event: FormEvent<HTMLFormElement>) => {
    if (cleared.current || !('indexedDB' in globalThis)) return;
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    void unsentEntries().then(
      ({ length }) =>
        length === 0 ? leave(submitter) : setAsked({ unsent: length, tried: false, button: submitter }),
      // No store on this phone: nothing can be waiting in it.
      () => leave(submitter),
    );
  };

  const sendNow = async (now: Asked) => {
    await outboxOf(personId, networkId).sendNow();
    const { length } = await unsentEntries();
    if (length === 0) await leave(now.button);
    else setAsked({ ...now, unsent: length, tried: true });
  };

  return (
    <form ref={form} action={action} onSubmit={submit}>
      {noSignal ? <p role="alert">{words.leave.noSignal}</p> : null}
      {/* Hidden and not removed: the button that was pressed is what the form is sent with in the end. */}
      <div hidden={asked !== undefined}>{children}</div>
      {asked === undefined ? null : (
        <div className="question-panel" role="alert">
          <h3>{words.leave.heading}</h3>
          <p>{counted(asked.tried ? words.leave.still : words.leave, asked.unsent)}</p>
          <p>{words.leave.explain}</p>
          <div className="answers">
            <button type="button" className="button button-action" onClick={() => void sendNow(asked)}>
              {words.leave.sendNow}
            </button>
            <button
              type="button"
              className="button button-plain"
              onClick={() => void unsentEntries().then(saveEntriesFile)}
            >
              {words.leave.saveFile}
            </button>
            <button type="button" className="button button-plain" onClick={() => setAsked(undefined)}>
              {words.leave.stay}
            </button>
            <button type="button" className="button button-plain" onClick={() => void leave(asked.button)}>
              {words.leave.leave}
            </button>
          </div>
        </div>
      )}
    </form>
  );
}
