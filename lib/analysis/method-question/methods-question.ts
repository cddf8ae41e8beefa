import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { daysBetween } from '@/lib/growing/calendar-date';
import { type AskedQuestion, levelledOutOf, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { compareMethods } from '../comparison/compare';
import type { JudgedBatch } from '../comparison/judged-batch';
import { type FittedAnswer, type FittedQuestion, fittedAnswer } from '../fitted/fitted-answer';
import { answerMethods, type MethodsData } from './answer-methods';
import type { MethodsAnswer } from './methods-answer';
import { readFollowUps } from './read-follow-ups';

/** The answer as last worked out, and the next one on its way where records have changed since. */
export function askMethods(
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<MethodsAnswer>> {
  return fittedAnswer(actor, scope.version, methodsQuestion(asked, scope, now));
}

export function methodsQuestion(
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): FittedQuestion<MethodsData, MethodsAnswer> {
  return {
    name: 'methods',
    asked: queryOfQuestion(asked),
    read: async (context) => {
      const { judged, batches, filter, asOf, version } = await readQuestionData(context, scope, now);
      return {
        version,
        data: {
          batches,
          raw: compareMethods(judged, filter, asOf),
          followUps: await readFollowUps(context, judged, filter),
          curveDays: 2 * longestWindow(judged),
          levelledOut: levelledOutOf(asked.level),
          asOf,
        },
      };
    },
    work: (data, fit) => answerMethods(data, fit),
  };
}

/** Days; twice as many are drawn, since what is found while cropping is shown too. */
function longestWindow(judged: readonly JudgedBatch[]): number {
  return judged.reduce((longest, { facts }) => {
    const { inoculatedOn, contaminationAssessedOn } = facts;
    return contaminationAssessedOn === null
      ? longest
      : Math.max(longest, daysBetween(inoculatedOn, contaminationAssessedOn));
  }, 14);
}
