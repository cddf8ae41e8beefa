import { readAs } from '@/lib/access/scoped-db';
import type { Signed } from '@/lib/access/session-lookup';
import { readerLocale } from '@/lib/base/reader-locale';
import { requestHash } from '@/lib/intake/request-hash';
import { serverTrouble } from '@/lib/intake/server-trouble';
import { getShed } from '@/lib/records/shed/get-shed.query';
import { problemDetails } from '@/lib/ui/entry/problem-details';
import { browserLanguage } from '@/lib/ui/i18n/browser-language';
import { wordsFor } from '@/lib/ui/i18n/words-for';
import { shedSnapshot } from '@/lib/ui/shed/shed-snapshot';

// No cache but the phone's own store may keep personal data; the tag lets that store ask whether it is still true.
const headers = { 'cache-control': 'private, no-store', vary: 'Cookie' };

function refuse(request: Request, signed: Signed | undefined, status: number, code: string, wait?: number) {
  const language = signed?.person ?? browserLanguage(request.headers.get('accept-language') ?? '');
  const words = wordsFor(language.language, readerLocale(language));
  const answer = { kind: 'refused', errors: [{ field: '', text: words(`errors.${code}`) }] } as const;
  return Response.json(problemDetails(status, words(`entry.problem.${status}`), answer), {
    status,
    headers: {
      ...headers,
      'content-type': 'application/problem+json',
      ...(wait === undefined ? {} : { 'retry-after': String(wait) }),
    },
  });
}

/** Answers `GET /api/shed`: what a phone keeps of the person's work, or 304 when it holds the same already. */
export async function answerShed(
  request: Request,
  findSigned: () => Promise<Signed | undefined>,
  now: Date = new Date(),
): Promise<Response> {
  let signed: Signed | undefined;
  try {
    signed = await findSigned();
    if (!signed) return refuse(request, signed, 401, 'sign-in-first');
    const { actor } = signed;
    if (!actor) return refuse(request, signed, 403, 'no-network');
    const shed = await readAs(actor, (context) => getShed(context, now));
    const locale = readerLocale(actor);
    const snapshot = shedSnapshot(actor, shed, wordsFor(actor.language, locale), locale, now);
    const { takenAt: _takenAt, ...content } = snapshot;
    const etag = `"${requestHash(content)}"`;
    if (request.headers.get('if-none-match') === etag)
      return new Response(null, { status: 304, headers: { ...headers, etag } });
    return Response.json(snapshot, { headers: { ...headers, etag } });
  } catch (error) {
    return refuse(request, signed, 503, 'server-busy', serverTrouble('a shed was not read', error));
  }
}
