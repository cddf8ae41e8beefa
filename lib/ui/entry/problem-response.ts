import type { Person } from '@/lib/access/actor';
import { readerLocale } from '@/lib/base/reader-locale';
import type { EntryAnswer } from '@/lib/offline/entry';
import type { ProblemReader } from '../form/problem-text';
import { browserLanguage } from '../i18n/browser-language';
import { wordsFor } from '../i18n/words-for';
import { entryAnswer } from './entry-answer';
import { problemDetails } from './problem-details';

/** Who reads the answer of a handler: the person, or whoever the browser says, in metric units. */
export type AnswerReader = ProblemReader & { readonly language: 'en' | 'es' };

const metric = { massUnit: 'kg', temperatureUnit: 'celsius', volumeUnit: 'litre' } as const;

export function answerReader(request: Request, person: Person | undefined): AnswerReader {
  const reader = person ?? browserLanguage(request.headers.get('accept-language') ?? '');
  const locale = readerLocale(reader);
  return {
    language: reader.language,
    locale,
    words: wordsFor(reader.language, locale),
    units: person ?? metric,
  };
}

type Unsaved = Exclude<EntryAnswer, { kind: 'saved' }>;

/** Problem details (RFC 9457) in the reader's language, carrying the answer; nothing keeps them. */
export function problemResponse(
  { words, language }: AnswerReader,
  status: number,
  answer: Unsaved,
  retryAfterSeconds?: number,
): Response {
  return Response.json(problemDetails(status, words(`entry.problem.${status}`), answer), {
    status,
    headers: {
      'content-type': 'application/problem+json',
      'cache-control': 'private, no-store',
      'content-language': language,
      vary: 'Cookie',
      ...(retryAfterSeconds === undefined ? {} : { 'retry-after': String(retryAfterSeconds) }),
    },
  });
}

/** The same for a refusal that no command made, by the code of its sentence. */
export function refusalResponse(
  reader: AnswerReader,
  status: number,
  code: string,
  more: { readonly max?: number; readonly retryAfterSeconds?: number } = {},
): Response {
  const error = { field: '', code, ...(more.max === undefined ? {} : { values: { max: more.max } }) };
  const answer = entryAnswer(reader, undefined, { kind: 'invalid', errors: [error] });
  return problemResponse(reader, status, answer, more.retryAfterSeconds);
}
