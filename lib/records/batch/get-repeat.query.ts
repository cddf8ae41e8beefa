import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { todayInZone } from '@/lib/growing/calendar-date';
import { spawnLeft } from '../spawn-lot/spawn-left';
import { batchInclude } from './batch-include';
import { type BatchView, batchView } from './batch-view';
import { findLastStarted, repeatable } from './find-last-started.query';
import { type ProposedTreatment, proposeTreatment } from './propose-treatment';

/** A spawn lot of the repeated batch, and whether the site has enough of it left; null where nobody can tell. */
export type RepeatedSpawn = {
  readonly lotId: string;
  readonly lotCode: string;
  readonly neededGrams: number | null;
  readonly leftGrams: number | null;
  readonly enough: boolean | null;
};

/** A batch to start once more: what it was made of, the treatment proposed for the new one, and its spawn. */
export type RepeatView = {
  readonly batch: BatchView;
  readonly today: string;
  readonly treatment: ProposedTreatment | null;
  readonly spawn: readonly RepeatedSpawn[];
};

/**
 * What a repeat of a batch carries over. `which` is its id or `last`. Undefined when it is not there, not the actor's
 * to see, a second life (it begins from its own spent units) or at a site that is closed.
 */
export async function getRepeat(
  context: ReadContext,
  which: string,
  now: Date,
): Promise<RepeatView | undefined> {
  const id = which === 'last' ? (await findLastStarted(context))?.id : which;
  if (id === undefined) return undefined;
  const row = await context.db.batch.findFirst({ where: { ...repeatable, id }, include: batchInclude });
  if (!row) return undefined;
  const batch = batchView(row);
  const lots = row.spawnShares.filter(({ lot }) => lot.voidedAt === null);
  const left = await spawnLeft(
    context,
    lots.map(({ spawnLotId }) => spawnLotId),
    [row.siteId],
  );
  return {
    batch,
    today: todayInZone(batch.timeZone, now),
    treatment: await proposeTreatment(context, row, now),
    spawn: lots.map(({ spawnLotId, lot, grams }) => {
      const here = left.find((one) => one.lotId === spawnLotId && one.siteId === row.siteId);
      const leftGrams = here === undefined ? null : here.grams;
      const enough = leftGrams === null || grams === null ? null : leftGrams >= grams;
      return { lotId: spawnLotId, lotCode: lot.code, neededGrams: grams, leftGrams, enough };
    }),
  };
}
