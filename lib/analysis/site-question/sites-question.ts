import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { type AskedQuestion, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { compareSites } from '../comparison/compare';
import { type FittedAnswer, type FittedQuestion, fittedAnswer } from '../fitted/fitted-answer';
import { readStoredResult, type StoredResult } from '../fitted/stored-result';
import { runInThread } from '../fitting/run-in-thread';
import { answerSites, type SitesData } from './answer-sites';
import { keptSites } from './kept-sites';
import type { SitePart, SitesAnswer } from './sites-answer';

const name = 'sites';

/** The answer as last worked out, and the next one on its way; each site's part is stored for its own members to read. */
export function askSites(
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<SitesAnswer>> {
  return fittedAnswer(actor, scope.version, sitesQuestion(asked, scope, now));
}

/** What is read for it and worked out. */
export function sitesQuestion(
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): FittedQuestion<SitesData, SitesAnswer> {
  return {
    name,
    asked: queryOfQuestion(asked),
    read: async (context) => {
      const { judged, batches, filter, asOf, version } = await readQuestionData(context, scope, now);
      return { version, data: { batches, raw: compareSites(judged, filter, asOf), asOf } };
    },
    work: (data, fit) => answerSites(data, fit, (request) => runInThread(request)),
    parts: ({ sites }) => sites.map((part) => ({ siteId: part.siteId, part })),
    kept: keptSites,
  };
}

/** A site's own part as last worked out for the coordinator; undefined before, and for sites that are not the reader's. */
export function readSitePart(
  context: ReadContext,
  asked: AskedQuestion,
  siteId: string,
): Promise<StoredResult<SitePart> | undefined> {
  return readStoredResult<SitePart>(context, { question: name, asked: queryOfQuestion(asked), siteId });
}
