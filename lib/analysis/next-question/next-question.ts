import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { todayInZone } from '@/lib/growing/calendar-date';
import { seasons } from '@/lib/growing/season';
import { type AskedQuestion, parseQuestion, queryOfQuestion } from '../adjusted/question-scope.input';
import { type QuestionScope, readQuestionData } from '../adjusted/read-question-data';
import { type FittedAnswer, type FittedQuestion, fittedAnswer, fittedPart } from '../fitted/fitted-answer';
import { readStoredResult } from '../fitted/stored-result';
import { answerNext, type NextData } from './answer-next';
import { choiceAsked } from './choice-asked';
import type { NextAnswer, NextPart } from './next-answer';
import { type NextAsked, queryOfNext, wholeYear } from './next-choice.input';
import type { AskedMix } from './next-ground';
import { readMethodCosts } from './read-method-costs';
import { readNextGround } from './read-next-ground';
import type { NextOptions } from './read-next-options';

type Question = FittedQuestion<NextData, NextAnswer>;

/** The answer for every site as last worked out, and the next one on its way; each site's part is stored for its members. */
export function askNext(
  actor: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<NextAnswer>> {
  return fittedAnswer(actor, scope.version, everySiteNext(actor, asked, scope, now));
}

/**
 * One site's answer for a coordinator or a member of it. What the site grows, in the season of today, is a part of the answer
 * for every site; anything else is a question of its own, with every method of the network.
 *
 * @param reader reads the records of all sites. @param scope as the reader has it.
 */
export async function askSiteNext(
  actor: Actor,
  reader: Actor,
  asked: NextAsked,
  options: NextOptions,
  scope: QuestionScope,
  now: Date,
): Promise<FittedAnswer<NextPart>> {
  const ask = (question: Question) =>
    fittedPart<NextData, NextAnswer, NextPart>(actor, reader, scope.version, question, options.siteId);
  const { species, material, season, container, methods } = asked;
  const differs =
    season !== undefined ||
    container !== undefined ||
    (methods?.some((method) => !options.equipment.usable.includes(method)) ?? false);
  if (!differs) {
    const usual = everySiteNext(reader, parseQuestion({}), scope, now);
    if (species === undefined && material === undefined) return ask(usual);
    const key = { question: usual.name, asked: usual.asked, siteId: options.siteId };
    const stored = await readAs(actor, (context) => readStoredResult<NextPart>(context, key));
    if (stored?.dataVersion === scope.version && choiceAsked(stored.result, asked)) return ask(usual);
  }
  return ask(oneSite(reader, asked, options, scope, now));
}

/** The question of every site as it is usually asked. */
const usualKey = { name: 'next', asked: queryOfQuestion(parseQuestion({})) };

/** The question of every site, what is read for it and worked out. */
export function everySiteNext(
  reader: Actor,
  asked: AskedQuestion,
  scope: QuestionScope,
  now: Date,
): Question {
  return questionOf(reader, { name: 'next', asked: queryOfQuestion(asked) }, scope, now);
}

function oneSite(
  reader: Actor,
  { species, material, season: chosen, container }: NextAsked,
  { siteId, season: ofToday }: NextOptions,
  scope: QuestionScope,
  now: Date,
): Question {
  const season = chosen ?? ofToday;
  const mix = { siteId, speciesId: species, materialId: material };
  const asked = { site: siteId, species, material, season, container, methods: undefined };
  return {
    ...questionOf(reader, { name: 'next for one', asked: queryOfNext(asked) }, scope, now, {
      ...mix,
      season: season === wholeYear ? null : seasons[season],
    }),
    partsOnly: true,
    ...(container === undefined ? { warmFrom: usualKey } : {}),
  };
}

function questionOf(
  reader: Actor,
  key: { readonly name: string; readonly asked: string },
  scope: QuestionScope,
  now: Date,
  only?: AskedMix,
): Question {
  const today = todayInZone(reader.networkTimeZone, now);
  return {
    ...key,
    read: async (context) => {
      const { judged, batches, filter, asOf, version } = await readQuestionData(context, scope, now);
      const ground = await readNextGround(context, judged, today, only);
      const costs = await readMethodCosts(context, today);
      return { version, data: { judged, batches, ground, costs, filter, asOf } };
    },
    work: answerNext,
    parts: ({ sites }) => sites.map((part) => ({ siteId: part.siteId, part })),
    kept: ({ briefs }) => ({ briefs, sites: [] }),
  };
}
