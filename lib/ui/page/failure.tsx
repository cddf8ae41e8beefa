'use client';

import en from '@/lib/ui/messages/en/failure.json';
import es from '@/lib/ui/messages/es/failure.json';

type Props = {
  readonly error: Error & { digest?: string };
  readonly retry: () => void;
  /** The language of the page that broke; both are at hand, because the server may not be. */
  readonly language: string;
};

/** Says that it broke, whose doing it is, and what became of what was typed; help is where it is on every page. */
export function Failure({ error, retry, language }: Props) {
  const words = language === 'es' ? es : en;
  return (
    <>
      <main className="page-main">
        <title>{`${words.heading} – Pinset`}</title>
        <h1>{words.heading}</h1>
        <p>{words.text}</p>
        {error.digest === undefined ? null : (
          <p className="quiet">{words.reference.replace('{digest}', error.digest)}</p>
        )}
        <button type="button" className="button button-action" onClick={retry}>
          {words.again}
        </button>
      </main>
      <footer className="page-footer">
        {/* A plain link: the page that broke may have taken the router with it. */}
        <a href="/help">{words.help}</a>
      </footer>
    </>
  );
}
