'use client';

import en from '@/lib/ui/messages/en/failure.json';
import es from '@/lib/ui/messages/es/failure.json';
import { isNoSignal } from './is-no-signal';

type Props = {
  readonly error: Error & { digest?: string };
  readonly retry: () => void;
  /** The language of the page that broke; both are at hand, because the server may not be. */
  readonly language: string;
};

/** Says that it broke or that no answer came, whose doing it is, and what became of what was typed; help is where it is on every page. */
export function Failure({ error, retry, language }: Props) {
  const words = language === 'es' ? es : en;
  const noSignal = typeof window !== 'undefined' && isNoSignal(error);
  const heading = noSignal ? words.noSignal : words.heading;
  return (
    <>
      <main className="page-main">
        <title>{`${heading} – Pinset`}</title>
        <h1>{heading}</h1>
        <p>{noSignal ? words.noSignalText : words.text}</p>
        {error.digest === undefined ? null : (
          <p className="quiet">{words.reference.replace('{digest}', error.digest)}</p>
        )}
        <button type="button" className="button button-action" onClick={retry}>
          {words.again}
        </button>
        {noSignal && navigator.serviceWorker?.controller ? (
          <p>
            <a href="/today">{words.kept}</a>
          </p>
        ) : null}
      </main>
      <footer className="page-footer">
        {/* A plain link: the page that broke may have taken the router with it. */}
        <a href="/help">{words.help}</a>
      </footer>
    </>
  );
}
