'use client';

import { useEffect, useRef } from 'react';
import { compareValues } from './compare-values';
import type { FieldSpec, FormState } from './field-spec';
import type { FormWords } from './form-words';
import { VersionsTable } from './versions-table';

type Props = {
  /** Who changed the record first and when. */
  readonly sentence: string;
  readonly fields: readonly FieldSpec[];
  /** What the record says now. */
  readonly theirs: FormState['values'];
  /** What was typed into this form. */
  readonly yours: FormState['values'];
  readonly words: FormWords;
};

// Takes the focus when the page comes from a post without script; the effect below does it with script.
const atOnce = { autoFocus: true };

/** Both versions of a record side by side, and the way back to theirs; the form's own button saves yours over them. */
export function ConflictPanel({ sentence, fields, theirs, yours, words }: Props) {
  const panel = useRef<HTMLDivElement>(null);
  useEffect(() => panel.current?.focus(), []);
  const differing = compareValues(fields, theirs, yours, words.locale);
  return (
    <div ref={panel} className="question-panel conflict-panel" role="alert" tabIndex={-1} {...atOnce}>
      <h2>{words.conflictTitle}</h2>
      <p>
        {sentence} {differing.length === 0 ? words.conflictSame : words.conflictIntro}
      </p>
      {differing.length === 0 ? null : (
        <VersionsTable
          words={{ field: words.conflictField, theirs: words.conflictTheirs, yours: words.conflictYours }}
          rows={differing.map(({ name, ...row }) => ({ key: name, ...row }))}
        />
      )}
      <p>
        {/* An ordinary link to this same page: the form starts again from what the record says now. */}
        <a className="button button-plain" href="?">
          {words.keepTheirs}
        </a>
      </p>
    </div>
  );
}
