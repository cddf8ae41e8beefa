'use client';

import { useActionState } from 'react';
import { unlessNoAnswer } from '../form/unless-no-answer';

export type MadeLink = { readonly name: string; readonly link: string };
export type MadeLinks = { readonly made: readonly MadeLink[]; readonly refused?: string };

type Props = {
  readonly action: (state: MadeLinks, data: FormData) => Promise<MadeLinks>;
  /** Null where no link is left to make: what was made stays in sight. */
  readonly submitLabel: string | null;
  readonly saving: string;
  readonly shownOnce: string;
  /** Without an answer links may have been made and never seen. */
  readonly noAnswer: string;
};

/** One press makes links; each is shown once, beside whom it is for. */
export function NewLinkForm({ action, submitLabel, saving, shownOnce, noAnswer }: Props) {
  const [state, act, pending] = useActionState(
    unlessNoAnswer(action, ({ made }) => ({ made, refused: noAnswer })),
    { made: [] },
  );
  return (
    <form action={act} className="my-6">
      {state.refused === undefined ? null : (
        <p className="notice" role="alert">
          {state.refused}
        </p>
      )}
      {state.made.length === 0 ? null : (
        <div className="notice" role="status">
          <p>{shownOnce}</p>
          <dl>
            {state.made.map(({ name, link }) => (
              <div key={link} className="mt-3">
                <dt>{name}</dt>
                <dd className="break-all">{link}</dd>
              </div>
            ))}
          </dl>
        </div>
      )}
      {submitLabel === null ? null : (
        <button type="submit" className="button button-action" aria-disabled={pending}>
          {pending ? saving : submitLabel}
        </button>
      )}
    </form>
  );
}
