'use client';

import { type ReactNode, useEffect, useRef, useState } from 'react';
import { undoMilliseconds } from '@/lib/offline/quick-outbox';
import { fillPlaces } from './fill-places';
import type { QuickWords } from './quick-words';
import type { Kept } from './use-quick-entry';

type Props = {
  readonly kept: Kept;
  readonly words: QuickWords;
  /** The next step in words: with this batch, with another. */
  readonly again: string;
  readonly another: string;
  readonly next: (sameBatch: boolean) => void;
  readonly undo: () => Promise<void>;
  readonly children?: ReactNode;
};

/**
 * What became of the entry, a way back for a while, and the next step. The heading takes the focus and not a button:
 * a scale may send Enter twice.
 */
export function SavedPanel({ kept, words, again, another, next, undo, children }: Props) {
  const heading = useRef<HTMLHeadingElement>(null);
  const [undoable, setUndoable] = useState(true);
  const [undoing, setUndoing] = useState(false);
  useEffect(() => heading.current?.focus(), []);
  useEffect(() => {
    const timer = setTimeout(
      () => setUndoable(false),
      Math.max(0, kept.keptAt + undoMilliseconds - Date.now()),
    );
    return () => clearTimeout(timer);
  }, [kept.keptAt]);
  const { state, batch, summary } = kept;
  const said = state.kind === 'needs-you' ? words.saved.needsYou : words.saved[state.kind];
  const takeBack = async () => {
    if (undoing) return;
    setUndoing(true);
    await undo();
    setUndoing(false);
    heading.current?.focus();
  };
  return (
    <div className={`saved saved-${state.kind}`}>
      <title>{`${said} – ${words.form.product}`}</title>
      <h1 ref={heading} tabIndex={-1}>
        {said}
      </h1>
      <p className="visually-hidden" role="status">
        {said}
      </p>
      <p className="saved-summary">{summary}</p>
      {state.kind === 'kept' || state.kind === 'needs-you' ? (
        <p>
          <a className="tap" href="/unsent">
            {words.saved.unsent}
          </a>
        </p>
      ) : null}
      <div className="answers">
        <button type="button" className="button button-action" onClick={() => next(true)}>
          {fillPlaces(again, { code: batch.code })}
        </button>
        <button type="button" className="button button-plain" onClick={() => next(false)}>
          {another}
        </button>
        {undoable && state.kind !== 'undone' ? (
          <button
            type="button"
            className="button button-plain"
            aria-disabled={undoing}
            onClick={() => void takeBack()}
          >
            {words.saved.undo}
          </button>
        ) : null}
      </div>
      {children}
      <p>
        <a className="tap" href={`/batches/${batch.id}`}>
          {fillPlaces(words.saved.toBatch, { code: batch.code })}
        </a>
      </p>
    </div>
  );
}
