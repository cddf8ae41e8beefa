import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import { readAs } from '@/lib/access/scoped-db';
import type { Fit } from '../fitting/fit';
import { oneAtATime } from './one-at-a-time';
import { readStoredResult, type StoredResult } from './stored-result';
import { workOut } from './work-out';

/** What a question is made of: how its records are read, and what is worked out from them. */
export type FittedQuestion<Data, Answer> = {
  readonly name: string;
  /** Query string of what was asked. */
  readonly asked: string;
  readonly read: (context: ReadContext) => Promise<{ readonly data: Data; readonly version: string }>;
  /** Slow. `fit` fits a model off the event loop, from where the same model ended last time. */
  readonly work: (data: Data, fit: Fit) => Promise<Answer>;
  /** The parts of the answer that members of a site may read, by site id. */
  readonly parts?: (answer: Answer) => readonly { readonly siteId: string; readonly part: unknown }[];
  /** What is stored of the whole, where the rest is read from the parts; all of it without this. */
  readonly kept?: (answer: Answer) => Answer;
  /** Nothing is stored but the parts: the question is about one site. */
  readonly partsOnly?: true;
  /** The question from whose last fits this one starts where it has none of its own. */
  readonly warmFrom?: { readonly name: string; readonly asked: string };
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
  const next = oneAtATime(actor.networkId, `${key.question}?${key.asked}`, () =>
    workOut(actor, version, question),
  );
  return stored ? { kind: 'earlier', stored, next } : { kind: 'first', next };
}

/**
 * The part of an answer that is about one site, as `fittedAnswer` gives the whole: for a member of that site or a coordinator.
 * It is worked out from the records that `reader` may read, and read back with the rights of whoever asks.
 */
export async function fittedPart<Data, Answer, Part>(
  actor: Actor,
  reader: Actor,
  version: string,
  question: FittedQuestion<Data, Answer>,
  siteId: string,
): Promise<FittedAnswer<Part>> {
  const key = { question: question.name, asked: question.asked, siteId };
  const own = () => readAs(actor, (context) => readStoredResult<Part>(context, key));
  const stored = await own();
  if (stored?.dataVersion === version) return { kind: 'current', stored };
  const next = oneAtATime(actor.networkId, `${key.question}?${key.asked}`, () =>
    workOut(reader, version, question),
  ).then(async () => {
    const part = await own();
    if (part === undefined) throw new Error(`${key.question}: no part was stored for site ${siteId}`);
    return part;
  });
  return stored ? { kind: 'earlier', stored, next } : { kind: 'first', next };
}
