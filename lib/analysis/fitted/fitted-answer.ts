import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { readAs } from '@/lib/access/scoped-db';
import { oneAtATime } from './one-at-a-time';
import { readStoredResult, type StoredResult, storeResult } from './stored-result';

/** What a question is made of: how its records are read, and what is worked out from them. */
export type FittedQuestion<Data, Answer> = {
  readonly name: string;
  /** Query string of what was asked. */
  readonly asked: string;
  readonly read: (context: ReadContext) => Promise<{ readonly data: Data; readonly version: string }>;
  /** Slow; off the event loop where it fits a model. */
  readonly work: (data: Data) => Promise<Answer>;
  /** The parts of the answer that members of a site may read, by site id. */
  readonly parts?: (answer: Answer) => readonly { readonly siteId: string; readonly part: unknown }[];
};

export type FittedAnswer<Answer> =
  /** Worked out from the records as they are. */
  | { readonly kind: 'current'; readonly stored: StoredResult<Answer> }
  /** From earlier records, shown with its date while `next` is on its way. */
  | {
      readonly kind: 'earlier';
      readonly stored: StoredResult<Answer>;
      readonly next: Promise<StoredResult<Answer>>;
    }
  /** Never worked out so far. */
  | { readonly kind: 'first'; readonly next: Promise<StoredResult<Answer>> };

/**
 * The answer to a question for a coordinator, without waiting for a fit: the stored one when the records have not changed,
 * otherwise the stored one and a promise of the next. At most one fit runs per network, and a question asked again while
 * it is being worked out joins that work; what changed meanwhile is seen by whoever asks after.
 */
export async function fittedAnswer<Data, Answer>(
  actor: Actor,
  version: string,
  question: FittedQuestion<Data, Answer>,
): Promise<FittedAnswer<Answer>> {
  const key = { question: question.name, asked: question.asked, siteId: null };
  const stored = await readAs(actor, (context) => readStoredResult<Answer>(context, key));
  if (stored?.dataVersion === version) return { kind: 'current', stored };
  const next = oneAtATime(actor.networkId, `${key.question}?${key.asked}`, () => workOut(actor, question));
  return stored ? { kind: 'earlier', stored, next } : { kind: 'first', next };
}

async function workOut<Data, Answer>(
  actor: Actor,
  question: FittedQuestion<Data, Answer>,
): Promise<StoredResult<Answer>> {
  const { name, asked } = question;
  const { data, version } = await readAs(actor, question.read);
  const result = await question.work(data);
  const stored = { result, dataVersion: version, fittedAt: new Date().toISOString() };
  await readAs(actor, async (context) => {
    await storeResult(context, { question: name, asked, siteId: null }, stored);
    for (const { siteId, part } of question.parts?.(result) ?? [])
      await storeResult(context, { question: name, asked, siteId }, { ...stored, result: part });
  });
  return stored;
}
