import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { buildTrialContent } from './build-trial-content';

/** The planned analysis of an ended trial before it is published: the coordinator's to read. */
export async function previewTrialResult(context: ReadContext, id: string, now: Date) {
  return context.actor.role === 'coordinator' ? buildTrialContent(context, id, now) : undefined;
}
