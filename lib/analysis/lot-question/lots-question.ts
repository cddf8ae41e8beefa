import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import type { ModelBatch } from '../adjusted/model-batch';
import { type AskedQuestion, parseQuestion, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { type FittedAnswer, fittedAnswer } from '../fitted/fitted-answer';
import { readStoredResult } from '../fitted/stored-result';
import { answerLots } from './answer-lots';
import type { JudgedLot, LotsAnswer } from './lots-answer';

const name = 'lots';

/** The answer as last worked out, and the next one on its way. */
export function askLots(
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<LotsAnswer>> {
  return fittedAnswer<readonly ModelBatch[], LotsAnswer>(actor, scope.version, {
    name,
    asked: queryOfQuestion(asked),
    read: async (context) => {
      const { batches, version } = await readQuestionData(context, scope, now);
      return { version, data: batches };
    },
    work: (batches, fit) => answerLots(batches, fit),
  });
}

/**
 * What the question as it opens last said of one lot, and when (an instant, ISO 8601), without working it out anew; undefined
 * while nobody has asked, and for everybody but a coordinator.
 */
export async function readJudgedLot(
  context: ReadContext,
  lotId: string,
): Promise<{ readonly judged: JudgedLot; readonly fittedAt: string } | undefined> {
  const asked = queryOfQuestion(parseQuestion({}));
  const stored = await readStoredResult<LotsAnswer>(context, { question: name, asked, siteId: null });
  if (stored?.result.kind !== 'judged') return undefined;
  const judged = stored.result.lots.find((lot) => lot.lotId === lotId);
  return judged && { judged, fittedAt: stored.fittedAt };
}

/** Codes of the network's spawn lots, by id; voided ones too, since old batches still name them. */
export async function readLotCodes({ db }: ReadContext): Promise<ReadonlyMap<string, string>> {
  const lots = await db.spawnLot.findMany({ select: { id: true, code: true } });
  return new Map(lots.map(({ id, code }) => [id, code]));
}
