import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import type { ModelBatch } from '../adjusted/model-batch';
import { type AskedQuestion, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { type FittedAnswer, fittedAnswer } from '../fitted/fitted-answer';
import { answerLots } from './answer-lots';
import type { LotsAnswer } from './lots-answer';

/** The answer as last worked out, and the next one on its way. */
export function askLots(
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<LotsAnswer>> {
  return fittedAnswer<readonly ModelBatch[], LotsAnswer>(actor, scope.version, {
    name: 'lots',
    asked: queryOfQuestion(asked),
    read: async (context) => {
      const { batches, version } = await readQuestionData(context, scope, now);
      return { version, data: batches };
    },
    work: (batches, fit) => answerLots(batches, fit),
  });
}

/** Codes of the network's spawn lots, by id; voided ones too, since old batches still name them. */
export async function readLotCodes({ db }: ReadContext): Promise<ReadonlyMap<string, string>> {
  const lots = await db.spawnLot.findMany({ select: { id: true, code: true } });
  return new Map(lots.map(({ id, code }) => [id, code]));
}
