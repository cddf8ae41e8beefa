import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { type ComparedRow, compareMethods } from '../comparison/compare';

/** Each method as recorded, nothing levelled out. */
export async function readRawMethods(
  context: ReadContext,
  scope: QuestionScope,
  now: Date,
): Promise<readonly ComparedRow[]> {
  const { judged, filter, asOf } = await readQuestionData(context, scope, now);
  return compareMethods(judged, filter, asOf);
}
