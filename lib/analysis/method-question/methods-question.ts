import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { daysBetween } from '@/lib/growing/calendar-date';
import { type AskedQuestion, levelledOutOf, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { compareMethods } from '../comparison/compare';
import { type FittedAnswer, fittedAnswer } from '../fitted/fitted-answer';
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
  return fittedAnswer<MethodsData, MethodsAnswer>(actor, scope.version, {
    name: 'methods',
    asked: queryOfQuestion(asked),
    read: async (context) => {
      const { judged, batches, filter, asOf, version } = await readQuestionData(context, scope, now);
      const windows = judged.flatMap(({ facts }) =>
        facts.contaminationAssessedOn === null
          ? []
          : [daysBetween(facts.inoculatedOn, facts.contaminationAssessedOn)],
      );
      return {
        version,
        data: {
          batches,
          raw: compareMethods(judged, filter, asOf),
          followUps: await readFollowUps(context, judged, filter),
          // A little past the longest window: what is found while cropping is shown too.
          curveDays: 2 * Math.max(14, ...windows),
          levelledOut: levelledOutOf(asked.level),
          asOf,
        },
      };
    },
    work: (data, fit) => answerMethods(data, fit),
  });
}
