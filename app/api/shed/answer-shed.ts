import { readAs } from '@/lib/access/scoped-db';
import type { Signed } from '@/lib/access/session-lookup';
import { requestHash } from '@/lib/intake/request-hash';
import { serverTrouble } from '@/lib/intake/server-trouble';
import { getShed } from '@/lib/records/shed/get-shed.query';
import { answerReader, refusalResponse } from '@/lib/ui/entry/problem-response';
import { shedSnapshot } from '@/lib/ui/shed/shed-snapshot';

// No cache but the phone's own store may keep personal data; the tag lets that store ask whether it is still true.
const headers = { 'cache-control': 'private, no-store', vary: 'Cookie' };

/** Answers `GET /api/shed`: what a phone keeps of the person's work, or 304 when it holds the same already. */
export async function answerShed(
  request: Request,
  findSigned: () => Promise<Signed | undefined>,
  now: Date = new Date(),
): Promise<Response> {
  let signed: Signed | undefined;
  const refuse = (status: number, code: string, retryAfterSeconds?: number) =>
    refusalResponse(
      answerReader(request, signed?.person),
      status,
      code,
      retryAfterSeconds === undefined ? {} : { retryAfterSeconds },
    );
  try {
    signed = await findSigned();
    if (!signed) return refuse(401, 'sign-in-first');
    const { actor } = signed;
    if (!actor) return refuse(403, 'no-network');
    const shed = await readAs(actor, (context) => getShed(context, now));
    const { words, locale } = answerReader(request, actor);
    const snapshot = shedSnapshot(actor, shed, words, locale, now);
    const { takenAt: _takenAt, ...content } = snapshot;
    const etag = `"${requestHash(content)}"`;
    if (request.headers.get('if-none-match') === etag)
      return new Response(null, { status: 304, headers: { ...headers, etag } });
    return Response.json(snapshot, { headers: { ...headers, etag } });
  } catch (error) {
    return refuse(503, 'server-busy', serverTrouble('a shed was not read', error));
  }
}
