import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { getRepeat, type RepeatView } from '@/lib/records/batch/get-repeat.query';
import { isId } from '@/lib/records/fields/id-field';
import { type FormSites, listFormSites } from '@/lib/records/site/list-form-sites.query';
import { listNextRuns, type NextRun } from '@/lib/records/trial/list-next-runs.query';

type Address = Readonly<Record<string, string | string[] | undefined>>;

/** What the address of the form of a new batch names, and the sites that it can be at. */
export type Begun = {
  /** The batch to repeat, where one was asked for. */
  readonly repeat: RepeatView | undefined;
  /** What running trials have drawn next, at the site of the form where there are too many sites to list. */
  readonly trialRuns: readonly NextRun[];
  /** The drawn run that the batch is made for. */
  readonly drawn: NextRun | undefined;
  readonly sites: FormSites;
};

/** Undefined when the batch to repeat is not there or not the actor's. */
export async function beginStart(
  context: ReadContext,
  address: Address,
  now: Date,
): Promise<Begun | undefined> {
  const asked = address.repeat;
  const which = asked === 'last' || (typeof asked === 'string' && isId(asked)) ? asked : null;
  const repeat = which === null ? undefined : await getRepeat(context, which, now);
  if (asked !== undefined && asked !== 'last' && repeat === undefined) return undefined;
  const runs = await listNextRuns(context);
  const slot = runs.find(({ slotId }) => slotId === address.trialSlotId);
  const own = repeat?.batch.siteId ?? slot?.siteId;
  const sites = await listFormSites(context, { asked: address.siteId, own, open: true });
  const { chosen } = sites;
  const trialRuns = chosen === undefined ? runs : runs.filter(({ siteId }) => siteId === chosen.id);
  // A run is drawn for its site: at another one the batch is none of it.
  const drawn = chosen === undefined || chosen.id === slot?.siteId ? slot : undefined;
  return { repeat, drawn, sites, trialRuns };
}
