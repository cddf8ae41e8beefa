import type { Signed } from '@/lib/access/session-lookup';
import { readerLocale } from '@/lib/base/reader-locale';
import { acceptPhoto, type PhotoPost } from '@/lib/intake/accept-photo';
import { fromSameOrigin } from '@/lib/intake/from-same-origin';
import { serverTrouble } from '@/lib/intake/server-trouble';
import { mostPhotoMegabytes } from '@/lib/records/photo/photo.input';
import { entryAnswer } from '@/lib/ui/entry/entry-answer';
import { problemDetails } from '@/lib/ui/entry/problem-details';
import { browserLanguage } from '@/lib/ui/i18n/browser-language';
import { wordsFor } from '@/lib/ui/i18n/words-for';

// The file, and room for the fields and the envelope about it.
const mostBytes = (mostPhotoMegabytes + 1) * 1024 * 1024;
const metric = { massUnit: 'kg', temperatureUnit: 'celsius', volumeUnit: 'litre' } as const;

function refuse(request: Request, signed: Signed | undefined, status: number, code: string, wait?: number) {
  const language = signed?.person ?? browserLanguage(request.headers.get('accept-language') ?? '');
  const words = wordsFor(language.language, readerLocale(language));
  const failure = {
    kind: 'invalid',
    errors: [{ field: '', code, values: { max: mostPhotoMegabytes } }],
  } as const;
  const reader = { words, locale: readerLocale(language), units: signed?.person ?? metric };
  const answer = entryAnswer(reader, undefined, failure);
  return Response.json(problemDetails(status, words(`entry.problem.${status}`), answer), {
    status,
    headers: {
      'content-type': 'application/problem+json',
      'cache-control': 'no-store',
      ...(wait === undefined ? {} : { 'retry-after': String(wait) }),
    },
  });
}

/** A form goes on to a page: the batch with its photos, or the form again with what was wrong. */
function goOn({ result, batchId, findingId }: PhotoPost): Response {
  const at = /^[0-9a-f-]{36}$/i.test(batchId) ? batchId : '';
  const problem = result.kind === 'invalid' ? (result.errors[0]?.code ?? 'try-again') : 'not-there';
  const path =
    result.kind === 'ok'
      ? `/batches/${result.value.batchId}?saved=photo#photos`
      : `/batches/${at}/photos/new?problem=${problem}${findingId === '' ? '' : `&finding=${encodeURIComponent(findingId)}`}`;
  // Relative: behind a proxy the server does not know by which name it was asked.
  return new Response(null, { status: 303, headers: { location: path, 'cache-control': 'no-store' } });
}

/** Answers `POST /api/photos`, from a form or from the outbox of a phone. */
export async function answerPhoto(
  request: Request,
  findSigned: () => Promise<Signed | undefined>,
): Promise<Response> {
  let signed: Signed | undefined;
  try {
    if (!fromSameOrigin(request.headers)) return refuse(request, undefined, 403, 'other-origin');
    signed = await findSigned();
    if (!signed) return refuse(request, signed, 401, 'sign-in-first');
    const length = Number(request.headers.get('content-length') ?? Number.NaN);
    if (!(length <= mostBytes)) return refuse(request, signed, 413, 'file-too-large');
    if (!request.headers.get('content-type')?.startsWith('multipart/form-data'))
      return refuse(request, signed, 415, 'entry-unreadable');
    const post = await acceptPhoto(await request.formData(), signed);
    const { result } = post;
    if (result.kind === 'other-account') return refuse(request, signed, 403, 'other-account');
    if (!post.fromOutbox) return goOn(post);
    if (result.kind === 'ok')
      return Response.json(
        { kind: 'saved', recordId: result.value.id, revision: 1, savedAt: new Date().toISOString() },
        { headers: { 'cache-control': 'no-store' } },
      );
    if (result.kind === 'invalid') return refuse(request, signed, 422, result.errors[0]?.code ?? 'try-again');
    return refuse(request, signed, 404, 'entry-not-there');
  } catch (error) {
    return refuse(request, signed, 503, 'server-busy', serverTrouble('a photo was not taken', error));
  }
}
