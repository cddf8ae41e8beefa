import 'server-only';
import type { Actor } from '@/lib/access/actor';
import type { ReadContext } from '@/lib/access/context';
import type { Language } from '@/lib/database/generated/enums';
import type { ContainerKind } from '@/lib/growing/vocabulary';
import { findLastStarted, type LastStarted } from '@/lib/records/batch/find-last-started.query';
import { listStartChoices } from '@/lib/records/batch/list-start-choices.query';
import { listStartFacts } from '@/lib/records/batch/list-start-facts.query';
import { listStandingNotices } from '@/lib/records/lot-notice/list-standing-notices.query';
import type { NoticeView } from '@/lib/records/lot-notice/notice-view';
import { type StartOptions, startOptions } from '@/lib/ui/batches/start-options';
import { withLeft } from '@/lib/ui/batches/with-left';
import { withOwnChoices } from '@/lib/ui/batches/with-own-choices';
import { withNotices } from '@/lib/ui/notices/with-notices';
import type { SumFacts } from '@/lib/ui/sums/sum-input';
import type { Begun } from './begin-start';

export type Start = {
  /** The batch to offer a repeat of, where none was asked for. */
  readonly last: LastStarted | undefined;
  /** The site of the form, the one site of somebody who has one, or the repeated batch's; '' where it is to be chosen. */
  readonly siteId: string;
  /** Notices about lots that can be chosen. */
  readonly notices: readonly NoticeView[];
  readonly timeZone: string;
  readonly options: (actor: Actor) => Promise<StartOptions>;
  readonly sumFacts: (container: ContainerKind, language: Language) => SumFacts;
};

/** Reads what the form of a new batch needs besides what its address names. */
export async function loadStart(
  context: ReadContext,
  { repeat, sites }: Pick<Begun, 'repeat' | 'sites'>,
): Promise<Start> {
  const { chosen } = sites;
  const proposedRunId = repeat?.treatment?.runId ?? null;
  const choices = await listStartChoices(context, { proposedRunId, formSites: sites });
  const facts = await listStartFacts(context, choices);
  const offered = new Set([...choices.spawnLots, ...choices.substrateLots].map(({ id }) => id));
  const notices = (await listStandingNotices(context)).filter(({ lotId }) => offered.has(lotId));
  const [first, second] = choices.sites;
  const only = second === undefined ? first : undefined;
  const siteId = chosen?.id ?? repeat?.batch.siteId ?? only?.id ?? '';
  return {
    last: repeat === undefined ? await findLastStarted(context, chosen?.id) : undefined,
    notices,
    siteId,
    timeZone:
      (choices.sites.find(({ id }) => id === siteId) ?? first)?.timeZone ?? context.actor.networkTimeZone,
    options: async ({ language, massUnit }) => {
      const usual = await startOptions(choices, language);
      const own = repeat === undefined ? usual : withOwnChoices(usual, repeat.batch, language);
      return withNotices(await withLeft(own, facts.spawnLeft, siteId, massUnit), notices);
    },
    sumFacts: (containerKind, language) => ({
      ...facts,
      containerKind,
      species: choices.species.map((one) => ({ id: one.id, name: one[language] })),
    }),
  };
}
