'use client';

import { useEffect, useRef } from 'react';
import type { FormState } from './field-spec';
import type { FormWords } from './form-words';

/** Asks about what is possible but unusual; each tick posts its code as `confirmed`. */
export function QuestionPanel({ questions, words }: { questions: FormState['questions']; words: FormWords }) {
  const panel = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (questions.length > 0) panel.current?.focus();
  }, [questions]);
  if (questions.length === 0) return null;
  return (
    <div ref={panel} className="question-panel" tabIndex={-1}>
      <h2>{words.confirmTitle}</h2>
      <p>{words.confirmIntro}</p>
      {questions.map((question) => (
        <div key={question.code} className="question">
          <p id={`question-${question.code}`}>{question.text}</p>
          <div className="choice">
            <input
              id={`confirm-${question.code}`}
              type="checkbox"
              name="confirmed"
              value={question.code}
              aria-describedby={`question-${question.code}`}
            />
            <label htmlFor={`confirm-${question.code}`}>{words.confirmBox}</label>
          </div>
        </div>
      ))}
    </div>
  );
}
