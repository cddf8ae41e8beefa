import type { ReaderUnits } from '@/lib/access/current-units';
import type { FieldError, Question } from '@/lib/base/result';
import { writtenValues } from '../format/written-values';
import type { DynamicWords } from '../i18n/dynamic-words';

/** The label of a field in its area's catalogue, indexes dropped: `components.0.grams` is `components.grams`. */
export function labelOf(words: DynamicWords, area: string, field: string): string {
  const key = `${area}.fields.${field
    .split('.')
    .filter((part) => !/^\d+$/.test(part))
    .join('.')}`;
  return words.has(key) ? words(key) : field;
}

/** Who reads the sentences. */
export type ProblemReader = {
  readonly words: DynamicWords;
  readonly locale: string;
  readonly units: ReaderUnits;
};

export type ProblemText = (group: 'errors' | 'questions', problem: FieldError | Question) => string;

/** Turns a command's codes into sentences that name the field as its area's form does. */
export function problemText({ words, locale, units }: ProblemReader, area: string): ProblemText {
  return (group, problem) => {
    const key = `${group}.${problem.code}`;
    const values = {
      label: problem.field === '' ? '' : labelOf(words, area, problem.field),
      ...writtenValues(problem.values ?? {}, units, locale),
    };
    return words.has(key) ? words(key, values) : `${values.label}: ${problem.code}`;
  };
}
