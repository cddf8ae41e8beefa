import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readAs, readSnapshot } from '@/lib/access/scoped-db';
import { runFit } from '../fitting/run-fit';
import { type Starts, warmFit } from '../fitting/warm-fit';
import { inFitTurn } from './fit-turn';
import type { FittedQuestion } from './fitted-answer';
import { readStarts, readStoredResult, type StoredResult, storeResult } from './stored-result';

/** The rows of a very large network take longer to read than a page may wait for a statement. */
const longestStatement = '120s';

/** Parts of a thousand sites take longer to store than one transaction may last. */
const partsAtOnce = 50;

/**
 * Works out a question's answer from the records as they are and stores it, while no other process fits for the network.
 *
 * @param wanted the state of the records that was asked about: an answer to it that another process has stored meanwhile
 *   is taken over.
 */
export function workOut<Data, Answer>(
  actor: Actor,
  wanted: string,
  question: FittedQuestion<Data, Answer>,
): Promise<StoredResult<Answer>> {
  const { name, asked } = question;
  const key = { question: name, asked, siteId: null };
  return inFitTurn(actor, async () => {
    const last = await readAs(actor, (context) => readStarts(context, key));
    if (last?.dataVersion === wanted) {
      const stored = await readAs(actor, (context) => readStoredResult<Answer>(context, key));
      if (stored) return stored;
    }
    const { data, version } = await readForFit(actor, question);
    const { fit, starts } = warmFit(runFit, last?.starts ?? (await startsOfOther(actor, question)));
    const result = await question.work(data, fit);
    const about = { dataVersion: version, fittedAt: new Date().toISOString() };
    const stored = { ...about, result: question.kept?.(result) ?? result };
    // The whole comes last: whoever finds it finds every part.
    const parts = question.parts?.(result) ?? [];
    for (let at = 0; at < parts.length; at += partsAtOnce)
      await readAs(actor, async (context) => {
        for (const { siteId, part } of parts.slice(at, at + partsAtOnce))
          await storeResult(context, { question: name, asked, siteId }, { ...about, result: part });
      });
    if (!question.partsOnly) await readAs(actor, (context) => storeResult(context, key, stored, starts));
    return stored;
  });
}

/** Where the fits of the question ended that this one is like; nothing where there is none. */
async function startsOfOther<Data, Answer>(
  actor: Actor,
  { warmFrom }: FittedQuestion<Data, Answer>,
): Promise<Starts> {
  if (warmFrom === undefined) return {};
  const key = { question: warmFrom.name, asked: warmFrom.asked, siteId: null };
  return (await readAs(actor, (context) => readStarts(context, key)))?.starts ?? {};
}

/** Reads what a question is worked out from, all of it as it stood at one instant. */
export function readForFit<Data, Answer>(
  actor: Actor,
  question: FittedQuestion<Data, Answer>,
): Promise<{ readonly data: Data; readonly version: string }> {
  return readSnapshot(actor, async (context) => {
    await context.db.$queryRaw`select set_config('statement_timeout', ${longestStatement}, true)`;
    return question.read(context);
  });
}
