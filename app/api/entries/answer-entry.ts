import type { Signed } from '@/lib/access/session-lookup';
import { type AcceptedEntry, acceptEntry, serverBusy } from '@/lib/intake/accept-entry';
import { serverTrouble } from '@/lib/intake/server-trouble';
import type { EntryAnswer } from '@/lib/offline/entry';
import { conflictAnswer, entryAnswer } from '@/lib/ui/entry/entry-answer';
import { answerReader, problemResponse } from '@/lib/ui/entry/problem-response';

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
  try {
    signed = await findSigned();
    const { words } = answerReader(request, signed?.person);
    accepted = await acceptEntry(request, signed, words('common.undoReason'));
  } catch (error) {
    accepted = serverBusy(serverTrouble('an entry was not taken', error));
  }
  if (accepted.kind === 'saved') return saved(accepted);
  const reader = answerReader(request, signed?.person);
  if (accepted.kind === 'conflict')
    return problemResponse(reader, 412, conflictAnswer(reader, accepted.entryKind, accepted.comparison));
  const { status, entryKind, failure, retryAfterSeconds } = accepted;
  return problemResponse(reader, status, entryAnswer(reader, entryKind, failure), retryAfterSeconds);
}
