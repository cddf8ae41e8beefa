import 'server-only';
import { refresh } from 'next/cache';
import { getLocale } from 'next-intl/server';
import type { Failure } from '@/lib/base/result';
import { formatInstant } from '../format/instant-text';
import { dynamicWords } from '../i18n/dynamic-words';
import { getReaderUnits } from '../i18n/reader-units';
import type { FormState } from './field-spec';
import { postedValues } from './posted-values';
import { problemText } from './problem-text';

/** Turns a command's refusal into the words of the form it came from. */
export async function toFormState(area: string, data: FormData, failure: Failure): Promise<FormState> {
  const words = await dynamicWords();
  const locale = await getLocale();
  const units = await getReaderUnits();
  const sentence = problemText({ words, locale, units }, area);
  const values = postedValues(data);
  switch (failure.kind) {
    case 'invalid':
      return {
        values,
        errors: failure.errors.map((error) => ({ field: error.field, text: sentence('errors', error) })),
        questions: [],
      };
    case 'confirm':
      return {
        values,
        errors: [],
        questions: failure.questions.map((question) => ({
          code: question.code,
          text: sentence('questions', question),
        })),
      };
    case 'not-found':
      return {
        values,
        errors: [{ field: '', text: sentence('errors', { field: '', code: 'not-found' }) }],
        questions: [],
      };
    case 'conflict': {
      // The page behind the form is drawn anew, so that it holds what the other person saved.
      refresh();
      const { current, changed } = failure;
      const when = changed && formatInstant(new Date(changed.at), changed.timeZone, locale);
      const conflict =
        when === undefined
          ? words('common.conflictSomebody')
          : changed?.by
            ? words('common.conflictBy', { who: changed.by, when })
            : words('common.conflictWhen', { when });
      return { values: { ...values, revision: String(current) }, errors: [], questions: [], conflict };
    }
  }
}
