'use client';

import { useEffect, useRef, useState } from 'react';
import type { FormState } from '../form/field-spec';
import { formValues } from './form-values';
import type { SumSpec } from './sum-spec';
import { workOut } from './work-out';

type Props = { readonly spec: SumSpec; readonly values: FormState['values'] };

/**
 * Sums of the form around it. The server works them out from what was posted or stands in the address; with script
 * they follow what is typed, and the button that asks the server goes.
 */
export function SumsBox({ spec, values: posted }: Props) {
  const [values, setValues] = useState(posted);
  const [live, setLive] = useState(false);
  const box = useRef<HTMLElement>(null);
  useEffect(() => {
    const form = box.current?.closest('form');
    if (!form) return;
    const listen = () => setValues(formValues(form));
    listen();
    setLive(true);
    form.addEventListener('input', listen);
    return () => form.removeEventListener('input', listen);
  }, []);
  const { kinds, heading, words, reader, facts, carryTo } = spec;
  const { lines, carry } = workOut(kinds, { values, facts, words, reader });
  if (live && lines.length === 0) return <section ref={box} hidden />;
  return (
    <section ref={box} className="sums" aria-label={heading}>
      {lines.length === 0 ? null : (
        <>
          <p className="sums-title">{heading}</p>
          <ul>
            {lines.map((line) => (
              <li key={line.key} className={line.tone === 'watch' ? 'sums-watch' : undefined}>
                {line.tone === 'watch' ? (
                  <svg width="16" height="15" viewBox="0 0 22 20" aria-hidden="true">
                    <path
                      d="M11 1.5 21 18.5H1ZM11 7v5.5M11 14.8v1.6"
                      fill="none"
                      stroke="currentColor"
                      strokeWidth="2"
                    />
                  </svg>
                ) : null}
                {line.text}
              </li>
            ))}
          </ul>
        </>
      )}
      {carryTo === undefined || carry === undefined ? null : (
        <p>
          <a className="button button-action" href={`${carryTo.path}?${new URLSearchParams(carry)}`}>
            {carryTo.label}
          </a>
        </p>
      )}
      {live ? null : (
        <button type="submit" name="workOut" value="yes" className="button button-plain">
          {spec.workOut}
        </button>
      )}
    </section>
  );
}
