'use client';

import { useEffect, useRef } from 'react';
import { fieldId } from './field-id';
import type { FormState } from './field-spec';
import type { FormWords } from './form-words';

type Props = {
  readonly state: FormState;
  readonly words: FormWords;
  /** Where an error about the whole form leads, and an error about a field that this form does not have. */
  readonly formId: string;
  readonly known: readonly string[];
};

/** Moves to the field with its label in view; without script the link's own target does nearly the same. */
function goTo(event: React.MouseEvent<HTMLAnchorElement>, id: string): void {
  const field = document.getElementById(id);
  if (field === null) return;
  event.preventDefault();
  for (
    let fold = field.closest('details');
    fold !== null;
    fold = fold.parentElement?.closest('details') ?? null
  ) {
    fold.open = true;
  }
  (field.closest('.field') ?? field).scrollIntoView();
  field.focus({ preventScroll: true });
}

// Takes the focus when the page comes from a post without script; the effect below does it with script.
const atOnce = { autoFocus: true };

/** "There is a problem", above everything else, with a link to each field that failed. */
export function ErrorSummary({ state, words, formId, known }: Props) {
  const summary = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (state.errors.length > 0) summary.current?.focus();
  }, [state]);
  if (state.errors.length === 0) return null;
  return (
    <div ref={summary} className="error-summary" role="alert" tabIndex={-1} {...atOnce}>
      <h2>{words.problemTitle}</h2>
      <ul>
        {state.errors.map((error) => {
          const id = known.includes(error.field) ? fieldId(error.field) : formId;
          return (
            <li key={error.field + error.text}>
              <a href={`#${id}`} onClick={(event) => goTo(event, id)}>
                {error.text}
              </a>
            </li>
          );
        })}
      </ul>
    </div>
  );
}
