import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { type CostsAnswer, type CostsScope, readCosts, readCostsScope } from './read-costs';

/** So many batches are added up one by one while somebody waits: a second or two. */
const mostAtOnce = 10_000;

/** `too-many`: more than `most` batches of the period are closed, so that fewer days have to be asked about. */
export type CostsAsked =
  | { readonly kind: 'answer'; readonly scope: CostsScope; readonly answer: CostsAnswer }
  | { readonly kind: 'too-many'; readonly scope: CostsScope; readonly most: number };

/** The costs that an address asks for, unless there are more batches behind them than can be added up at once. */
export async function askCosts(
  context: ReadContext,
  query: Record<string, string | string[] | undefined>,
  now: Date,
  most: number = mostAtOnce,
): Promise<CostsAsked> {
  const scope = await readCostsScope(context, query, now);
  const { from, to } = scope.period;
  const [few] = await context.db.$queryRaw<{ few: boolean }[]>`
    select count(*) <= ${most} as few from (select from batch
      where network_id = ${context.actor.networkId}::uuid and voided_at is null and closed_on is not null
        and inoculated_on between ${from}::date and ${to}::date
      limit ${most + 1}) b`;
  if (few?.few === false) return { kind: 'too-many', scope, most };
  return { kind: 'answer', scope, answer: await readCosts(context, query, now) };
}
