import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import type { Language } from '@/lib/database/generated/enums';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { getRepeat, type RepeatView } from '@/lib/records/batch/get-repeat.query';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { listStartFacts } from '@/lib/records/batch/list-start-facts.query';
import { type StartOptions, startOptions } from '@/lib/ui/batches/start-options';
import { withLeft } from '@/lib/ui/batches/with-left';
import { withOwnChoices } from '@/lib/ui/batches/with-own-choices';
import type { SumFacts } from '@/lib/ui/sums/sum-input';

export type Start = {
  /** The batch to repeat, where one was asked for. */
  readonly repeat: RepeatView | undefined;
  /** The batch to offer a repeat of, where none was asked for. */
  readonly last: RepeatView | undefined;
  /** The one site of somebody who has one, or the repeated batch's; '' where it is to be chosen. */
  readonly siteId: string;
  readonly timeZone: string;
  readonly options: (actor: Actor) => Promise<StartOptions>;
  readonly sumFacts: (container: ContainerKind, language: Language) => SumFacts;
};

/** Reads what the form of a new batch needs; undefined when the batch to repeat is not there or not the actor's. */
export async function loadStart(
  context: ReadContext,
  asked: string | string[] | undefined,
  now: Date,
): Promise<Start | undefined> {
  const which =
    asked === 'last' || (typeof asked === 'string' && /^[0-9a-f-]{36}$/i.test(asked)) ? asked : null;
  const repeat = which === null ? undefined : await getRepeat(context, which, now);
  if (asked !== undefined && asked !== 'last' && repeat === undefined) return undefined;
  const choices = await listStartChoices(context, repeat?.treatment?.runId ?? null);
  const facts = await listStartFacts(context, choices);
  const [first, second] = choices.sites;
  const only = second === undefined ? first : undefined;
  const siteId = repeat?.batch.siteId ?? only?.id ?? '';
  return {
    repeat,
    last: repeat === undefined ? await getRepeat(context, 'last', now) : undefined,
    siteId,
    timeZone:
      (choices.sites.find(({ id }) => id === siteId) ?? first)?.timeZone ?? context.actor.networkTimeZone,
    options: async ({ language, massUnit }) => {
      const offered = await startOptions(choices, language);
      const own = repeat === undefined ? offered : withOwnChoices(offered, repeat.batch, language);
      return withLeft(own, facts.spawnLeft, siteId, massUnit);
    },
    sumFacts: (containerKind, language) => ({
      ...facts,
      containerKind,
      species: choices.species.map((one) => ({ id: one.id, name: one[language] })),
    }),
  };
}
