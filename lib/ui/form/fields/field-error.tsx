import { fieldId } from '../field-id';
import type { FormWords } from '../form-words';

/** The sentence beside a failing field: the same words as in the summary. */
export function FieldError({
  name,
  text,
  words,
}: {
  name: string;
  text: string | undefined;
  words: FormWords;
}) {
  if (text === undefined) return null;
  return (
    <p id={`${fieldId(name)}-error`} className="field-error">
      <span className="visually-hidden">{words.errorPrefix} </span>
      {text}
    </p>
  );
}
