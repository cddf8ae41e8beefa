'use client';

import { useEffect, useRef } from 'react';
import type { FormState } from '../form/field-spec';
import type { QuickWords } from './quick-words';

type Props = {
  readonly questions: FormState['questions'];
  readonly words: QuickWords['ask'];
  readonly yes: () => void;
  readonly no: () => void;
};

/** Asks about what is possible but unusual, with one button for each answer; takes the focus when it appears. */
export function AskPanel({ questions, words, yes, no }: Props) {
  const panel = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (questions.length === 0) return;
    panel.current?.focus();
    panel.current?.scrollIntoView({ block: 'nearest' });
  }, [questions]);
  if (questions.length === 0) return null;
  return (
    <div ref={panel} className="question-panel" role="alert" tabIndex={-1}>
      <h2>{words.title}</h2>
      {questions.map(({ code, text }) => (
        <p key={code}>{text}</p>
      ))}
      <div className="answers">
        <button type="button" className="button button-action" onClick={no}>
          {words.no}
        </button>
        <button type="button" className="button button-plain" onClick={yes}>
          {words.yes}
        </button>
      </div>
    </div>
  );
}
