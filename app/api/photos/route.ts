import { currentSigned } from '@/lib/access/current';
import { answerPhoto } from './answer-photo';

/** Takes a picture of a batch or of a finding, from a form or from a phone's outbox. */
export function POST(request: Request): Promise<Response> {
  return answerPhoto(request, currentSigned);
}
