import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { type AskedQuestion, levelledOutOf, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { compareOne } from '../comparison/compare';
import { type FittedAnswer, type FittedQuestion, fittedAnswer } from '../fitted/fitted-answer';
import { answerLosses, type LossesData } from './answer-losses';
import type { LossesAnswer } from './losses-answer';

/** The answer as last worked out, and the next one on its way where records have changed since. */
export function askLosses(
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<LossesAnswer>> {
  return fittedAnswer(actor, scope.version, lossesQuestion(asked, scope, now));
}

/** What is read for it and worked out. */
export function lossesQuestion(
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): FittedQuestion<LossesData, LossesAnswer> {
  return {
    name: 'losses',
    asked: queryOfQuestion(asked),
    read: async (context) => {
      const { judged, batches, filter, asOf, version } = await readQuestionData(context, scope, now);
      return {
        version,
        data: {
          batches,
          raw: compareOne(judged, filter, asOf),
          codes: await readSourceCodes(context),
          levelledOut: levelledOutOf(asked.level),
        },
      };
    },
    work: (data, fit) => answerLosses(data, fit),
  };
}

/** Codes of lots and treatment runs by id; voided ones too, since old batches still name them. */
async function readSourceCodes({ db }: ReadContext): Promise<ReadonlyMap<string, string>> {
  const select = { id: true, code: true } as const;
  const [spawn, material, runs] = [
    await db.spawnLot.findMany({ select }),
    await db.substrateLot.findMany({ select }),
    await db.treatmentRun.findMany({ select }),
  ];
  return new Map([...spawn, ...material, ...runs].map(({ id, code }) => [id, code]));
}
