import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { type AskedQuestion, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { together } from '../comparison/comparison-filter.input';
import { type FittedAnswer, fittedAnswer } from '../fitted/fitted-answer';
import { answerTreatments, type TreatmentsData } from './answer-treatments';
import { readRuns, readWindows } from './read-runs';
import { courseWindows, drawnRuns, readCourses } from './run-courses';
import { runsBehind } from './runs-behind';
import type { TreatmentsAnswer } from './treatments-answer';

/** The answer as last worked out, and the next one on its way. */
export function askTreatments(
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<TreatmentsAnswer>> {
  return fittedAnswer<TreatmentsData, TreatmentsAnswer>(actor, scope.version, {
    name: 'treatments',
    asked: queryOfQuestion(asked),
    read: async (context) => {
      const { judged, batches, filter, asOf, version } = await readQuestionData(context, scope, now);
      const runs = await readRuns(context, filter, now);
      const windows = await readWindows(context);
      const drawn = drawnRuns(runsBehind(judged, runs));
      return {
        version,
        data: {
          judged,
          batches,
          runs,
          from: filter.from,
          courses: await readCourses(context, drawn, windows),
          windows: courseWindows(windows),
          ground: {
            pooled: { species: filter.species === together, materials: filter.material === together },
            asOf,
          },
        },
      };
    },
    work: (data, fit) => answerTreatments(data, fit),
  });
}
