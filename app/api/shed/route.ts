import { currentSigned } from '@/lib/access/current';
import { answerShed } from './answer-shed';

/** What a phone keeps of a person's work, to go on with no signal. */
export function GET(request: Request): Promise<Response> {
  return answerShed(request, currentSigned);
}
