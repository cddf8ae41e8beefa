import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { addDays, todayInZone } from '@/lib/growing/calendar-date';
import { parseQuestion, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData, readQuestionScope } from '../adjusted/read-question-data';
import { answersTogether } from '../fitted/answers-together';
import { type FittedAnswer, fittedAnswer } from '../fitted/fitted-answer';
import { askLots } from '../lot-question/lots-question';
import { readRecordFaults } from '../record-question/read-record-faults';
import { readRuns } from '../record-question/read-runs';
import { askSites } from '../site-question/sites-question';
import { answerSurprises, type SurprisesData } from './answer-surprises';
import type { WatchAnswers } from './fitted-signals';
import { recordSignals } from './record-signals';
import { runSignals } from './run-signals';
import type { Signal } from './signal';
import type { SurprisesAnswer } from './surprises-answer';
import type { WatchPeriod } from './watch-period.input';

export type Watched = {
  readonly scope: QuestionScope;
  /** The day from which signals are listed. */
  readonly since: string;
  /** What needs no model: runs outside their window, records that went missing. */
  readonly plain: readonly Signal[];
  /** So many of the latest batches at most were looked through for missing records, where there are more. */
  readonly latestOnly: number | undefined;
  readonly fitted: FittedAnswer<WatchAnswers>;
};

/**
 * What the watch list is made of, for a coordinator: what the records say by themselves, and the answers of the models as far
 * as they are known. The lots and sites are those of the pages that ask about them, so that the list and the pages agree.
 * Undefined while nothing is recorded.
 */
export async function watch(actor: Actor, now: Date, days: WatchPeriod): Promise<Watched | undefined> {
  const asked = parseQuestion({});
  const since = addDays(todayInZone(actor.networkTimeZone, now), -days);
  const faults = await readRecordFaults(actor, now, { since });
  if (!faults) return undefined;
  const { from, to } = faults.period;
  const read = await readAs(actor, async (context) => {
    const scope = await readQuestionScope(context, asked, now, faults.choices);
    const runs = since < from ? await readRuns(context, { from: since, to }, now) : faults.runs;
    const plain = [...runSignals(runs), ...recordSignals(faults.faults, since)];
    return scope && { scope, plain, latestOnly: faults.latestOnly };
  });
  if (!read) return undefined;
  const [lots, sites, surprises] = await Promise.all([
    askLots(actor, asked, read.scope, now),
    askSites(actor, asked, read.scope, now),
    askSurprises(actor, read.scope, now),
  ]);
  return { ...read, since, fitted: answersTogether<WatchAnswers>({ lots, sites, surprises }) };
}

function askSurprises(actor: Actor, scope: QuestionScope, now: Date): Promise<FittedAnswer<SurprisesAnswer>> {
  return fittedAnswer<SurprisesData, SurprisesAnswer>(actor, scope.version, {
    name: 'surprises',
    asked: queryOfQuestion(parseQuestion({})),
    read: async (context) => {
      const { judged, batches, version } = await readQuestionData(context, scope, now);
      const days = judged.map(
        ({ facts }) => [facts.id, facts.yieldAssessedOn ?? facts.inoculatedOn] as const,
      );
      return { version, data: { batches, yieldDays: Object.fromEntries(days) } };
    },
    work: (data, fit) => answerSurprises(data, fit),
  });
}
