import type { Signed } from '@/lib/access/session-lookup';
import { readerLocale } from '@/lib/base/reader-locale';
import { type AcceptedEntry, acceptEntry, serverBusy } from '@/lib/intake/accept-entry';
import { serverTrouble } from '@/lib/intake/server-trouble';
import type { EntryAnswer } from '@/lib/offline/entry';
import { conflictAnswer, entryAnswer } from '@/lib/ui/entry/entry-answer';
import { problemDetails } from '@/lib/ui/entry/problem-details';
import { browserLanguage } from '@/lib/ui/i18n/browser-language';
import { wordsFor } from '@/lib/ui/i18n/words-for';

const metric = { massUnit: 'kg', temperatureUnit: 'celsius', volumeUnit: 'litre' } as const;

function saved({ taken }: Extract<AcceptedEntry, { kind: 'saved' }>): Response {
  const answer: EntryAnswer = { kind: 'saved', ...taken };
  return Response.json(answer, { headers: { 'cache-control': 'no-store' } });
}

/**
 * Answers `POST /api/entries`: 200 with what was saved, else problem details (RFC 9457) in the person's language.
 * `findSigned` tells who asks; when it or the database fails, the answer is a 503 and the entry stays on the phone.
 */
export async function answerEntry(
  request: Request,
  findSigned: () => Promise<Signed | undefined>,
): Promise<Response> {
  let signed: Signed | undefined;
  let accepted: AcceptedEntry;
  const language = () => signed?.person ?? browserLanguage(request.headers.get('accept-language') ?? '');
  const wordsNow = () => wordsFor(language().language, readerLocale(language()));
  try {
    signed = await findSigned();
    accepted = await acceptEntry(request, signed, wordsNow()('common.undoReason'));
  } catch (error) {
    accepted = serverBusy(serverTrouble('an entry was not taken', error));
  }
  if (accepted.kind === 'saved') return saved(accepted);
  const words = wordsNow();
  const reader = { words, locale: readerLocale(language()), units: signed?.person ?? metric };
  const status = accepted.kind === 'conflict' ? 412 : accepted.status;
  const answer =
    accepted.kind === 'conflict'
      ? conflictAnswer(reader, accepted.entryKind, accepted.comparison)
      : entryAnswer(reader, accepted.entryKind, accepted.failure);
  const wait = accepted.kind === 'failed' ? accepted.retryAfterSeconds : undefined;
  return Response.json(problemDetails(status, words(`entry.problem.${status}`), answer), {
    status,
    headers: {
      'content-type': 'application/problem+json',
      'cache-control': 'no-store',
      'content-language': language().language,
      ...(wait === undefined ? {} : { 'retry-after': String(wait) }),
    },
  });
}
