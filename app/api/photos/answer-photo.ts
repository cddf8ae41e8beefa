import type { Signed } from '@/lib/access/session-lookup';
import { acceptPhoto, type PhotoPost } from '@/lib/intake/accept-photo';
import { fromSameOrigin } from '@/lib/intake/from-same-origin';
import { goOnTo } from '@/lib/intake/go-on-to';
import { serverTrouble } from '@/lib/intake/server-trouble';
import { isId } from '@/lib/records/fields/id-field';
import { mostPhotoMegabytes } from '@/lib/records/photo/photo.input';
import { answerReader, refusalResponse } from '@/lib/ui/entry/problem-response';

// The file, and room for the fields and the envelope about it.
const mostBytes = (mostPhotoMegabytes + 1) * 1024 * 1024;

/** The page that a form goes on to: the batch with its photos, or the form again with what was wrong. */
function pageAfter({ result, batchId, findingId }: PhotoPost): string {
  const at = isId(batchId) ? batchId : '';
  const problem = result.kind === 'invalid' ? (result.errors[0]?.code ?? 'try-again') : 'not-there';
  return result.kind === 'ok'
    ? `/batches/${result.value.batchId}?saved=photo#photos`
    : `/batches/${at}/photos/new?problem=${problem}${findingId === '' ? '' : `&finding=${encodeURIComponent(findingId)}`}`;
}

/** Answers `POST /api/photos`, from a form or from the outbox of a phone. */
export async function answerPhoto(
  request: Request,
  findSigned: () => Promise<Signed | undefined>,
): Promise<Response> {
  let signed: Signed | undefined;
  const refuse = (status: number, code: string, retryAfterSeconds?: number) =>
    refusalResponse(answerReader(request, signed?.person), status, code, {
      max: mostPhotoMegabytes,
      ...(retryAfterSeconds === undefined ? {} : { retryAfterSeconds }),
    });
  try {
    if (!fromSameOrigin(request.headers)) return refuse(403, 'other-origin');
    signed = await findSigned();
    if (!signed) return refuse(401, 'sign-in-first');
    const length = Number(request.headers.get('content-length') ?? Number.NaN);
    if (!(length <= mostBytes)) return refuse(413, 'file-too-large');
    if (!request.headers.get('content-type')?.startsWith('multipart/form-data'))
      return refuse(415, 'entry-unreadable');
    const post = await acceptPhoto(request.headers, await request.formData(), signed);
    const { result } = post;
    if (result.kind === 'other-account') return refuse(403, 'other-account');
    if (!post.fromOutbox) return goOnTo(request, pageAfter(post));
    switch (result.kind) {
      case 'ok':
        return Response.json(
          { kind: 'saved', recordId: result.value.id, revision: 1, savedAt: new Date().toISOString() },
          { headers: { 'cache-control': 'no-store' } },
        );
      case 'invalid':
        return refuse(422, result.errors[0]?.code ?? 'try-again');
      default:
        return refuse(404, 'entry-not-there');
    }
  } catch (error) {
    return refuse(503, 'server-busy', serverTrouble('a photo was not taken', error));
  }
}
