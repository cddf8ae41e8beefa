'use client';

import type { Route } from 'next';
import { useRouter } from 'next/navigation';
import { type FormEvent, type ReactNode, useEffect, useId, useMemo, useState, useTransition } from 'react';
import { ErrorSummary } from './error-summary';
import type { FormState } from './field-spec';
import type { FormWords } from './form-words';
import { postFile } from './post-file';
import { SendingLine } from './sending-line';

type Props = {
  /** The handler that takes the file: it is larger than an action may be. */
  readonly action: string;
  /** The page's h1 and title: the summary of errors has to stand above it. */
  readonly heading: string;
  readonly label?: string;
  /** Shown between heading and form. */
  readonly intro: ReactNode;
  /** What the server said of the file sent before. */
  readonly errors: FormState['errors'];
  /** Names of the boxes that an error can be about. */
  readonly known: readonly string[];
  readonly submitLabel: string;
  readonly words: FormWords;
  /** The boxes, and whatever else is sent. */
  readonly children: ReactNode;
};

/**
 * A form that sends a file. With script it is sent from the page, which keeps the file and everything typed where no
 * answer comes and says so; without, the browser posts it and goes on by itself.
 */
export function FileForm({ action, words, errors, known, ...props }: Props) {
  const router = useRouter();
  const formId = useId();
  const [pending, start] = useTransition();
  // Sent, and the next page on its way: a second press would send it again. A page shown from memory starts anew.
  const [left, setLeft] = useState(false);
  useEffect(() => {
    const shown = () => setLeft(false);
    addEventListener('pageshow', shown);
    return () => removeEventListener('pageshow', shown);
  }, []);
  const busy = pending || left;
  const [told, setTold] = useState<string>();
  // The summary takes the focus with each new state, and only then.
  const state = useMemo<FormState>(
    () => ({ values: {}, errors: told === undefined ? errors : [{ field: '', text: told }], questions: [] }),
    [told, errors],
  );
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    if (busy) return;
    const data = new FormData(event.currentTarget);
    start(async () => {
      const answer = await postFile(action, data);
      if (answer === undefined || 'refused' in answer) return setTold(answer?.refused ?? words.noSignal);
      setTold(undefined);
      // Back to this form it stays as it is; any other page is loaded anew, for this one, shown from memory on the way
      // back, would send its id again with another file.
      if (answer.goOnTo.startsWith(`${window.location.pathname}?`)) router.push(answer.goOnTo as Route);
      else {
        setLeft(true);
        window.location.assign(answer.goOnTo);
      }
    });
  };
  const title = `${state.errors.length > 0 ? `${words.errorPrefix} ` : ''}${props.heading} – ${words.product}`;
  return (
    <>
      <title>{title}</title>
      <ErrorSummary state={state} words={words} formId={formId} known={known} />
      <h1>{props.heading}</h1>
      {props.intro}
      <form
        id={formId}
        action={action}
        onSubmit={submit}
        method="post"
        encType="multipart/form-data"
        noValidate
        className="record-form"
        aria-label={props.label}
        tabIndex={-1}
      >
        {props.children}
        <div className="form-end">
          <button type="submit" className="button button-action" aria-disabled={busy}>
            {busy ? words.saving : props.submitLabel}
          </button>
        </div>
        <SendingLine pending={busy} saving={words.saving} />
      </form>
    </>
  );
}
