import { currentSigned } from '@/lib/access/current';
import { answerEntry } from './answer-entry';

/** Takes one entry of a phone's outbox, exactly once however often it is sent. */
export function POST(request: Request): Promise<Response> {
  return answerEntry(request, currentSigned);
}
