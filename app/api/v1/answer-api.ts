import { type Answered, refusal } from '@/lib/api/door/answer';
import { answerRequest } from '@/lib/api/door/answer-request';
import { serverTrouble } from '@/lib/intake/server-trouble';
import { apiResponse } from '@/lib/ui/api/api-response';
import { answerReader } from '@/lib/ui/entry/problem-response';

/** Answers a script; whatever breaks on our side is a 503 that says when it is worth trying again. */
export async function answerApi(request: Request, segments: readonly string[]): Promise<Response> {
  let answered: Answered;
  try {
    answered = await answerRequest(request, segments);
  } catch (error) {
    const seconds = serverTrouble('a request of a script was not answered', error);
    const answer = refusal('busy', { code: 'api-busy' }, { 'retry-after': String(seconds) });
    answered = { actor: undefined, answer };
  }
  return apiResponse(answerReader(request, answered.actor), answered);
}
