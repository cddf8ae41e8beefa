'use client';

import { useEffect, useRef, useState } from 'react';
import { fieldId } from '../field-id';
import type { FormWords } from '../form-words';
import { massEchoText } from '../mass-echo';

type Props = { readonly name: string; readonly unitName: string; readonly words: FormWords };

/** Repeats large what was understood while the mass is typed or its unit changed; silent without script. */
export function MassEchoLine({ name, unitName, words }: Props) {
  const [text, setText] = useState('');
  const line = useRef<HTMLOutputElement>(null);
  useEffect(() => {
    const form = line.current?.form;
    if (!form) return;
    const entry = (field: string): string => {
      const input = form.elements.namedItem(field);
      return input instanceof HTMLInputElement || input instanceof HTMLSelectElement ? input.value : '';
    };
    const listen = () => setText(massEchoText(entry(name), entry(unitName), words));
    listen();
    form.addEventListener('input', listen);
    return () => form.removeEventListener('input', listen);
  }, [name, unitName, words]);
  return (
    <output ref={line} htmlFor={fieldId(name)} className="echo">
      {text}
    </output>
  );
}
