import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { quarterOf } from '@/lib/growing/quarter';
import { type AskedQuestion, parseQuestion, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { type FittedAnswer, fittedAnswer } from '../fitted/fitted-answer';
import { readStoredResult, type StoredResult } from '../fitted/stored-result';
import { runFit } from '../fitting/run-fit';
import { answerNext, type NextData } from './answer-next';
import type { NextAnswer, NextPart } from './next-answer';
import { readMethodCosts } from './read-method-costs';
import { readNextGround } from './read-next-ground';

const name = 'next';

/** The answer for every site as last worked out, and the next one on its way; each site's part is stored for its members. */
export function askNext(
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<NextAnswer>> {
  const today = todayInZone(actor.networkTimeZone, now);
  return fittedAnswer<NextData, NextAnswer>(actor, scope.version, {
    name,
    asked: queryOfQuestion(asked),
    read: async (context) => {
      const { judged, batches, filter, asOf, version } = await readQuestionData(context, scope, now);
      const ground = await readNextGround(context, judged, today);
      const costs = await readMethodCosts(context, today);
      return { version, data: { judged, batches, ground, costs, filter, season: quarterOf(today), asOf } };
    },
    work: (data) => answerNext(data, (request) => runFit(request)),
    parts: ({ sites }) => sites.map((part) => ({ siteId: part.siteId, part })),
  });
}

/** A site's part as last worked out for a coordinator; undefined before, and for sites that are not the reader's. */
export function readNextPart(
  context: ReadContext,
  siteId: string,
): Promise<StoredResult<NextPart> | undefined> {
  const asked = queryOfQuestion(parseQuestion({}));
  return readStoredResult<NextPart>(context, { question: name, asked, siteId });
}
