import { addDays } from '@/lib/growing/calendar-date';
import { receiveSpawn } from '@/lib/records/spawn-lot/receive-spawn.command';
import { receiveSpawnInput } from '@/lib/records/spawn-lot/spawn-lot.input';
import type { StoryPlan } from '../plan/story-plan';
import type { LotBook } from './add-lots';
import type { Take } from './in-one-go';

/** Spawn lots in use at a site within these days before its last batch get a receipt, so that something is left. */
const recentDays = 60;
const spareGrams = 4_000;

/** Records what a site received of the lots that it still uses: what its batches took, and some more. */
export async function receiveRecentSpawn(
  take: Take,
  plan: StoryPlan,
  book: LotBook,
  siteCode: string,
  siteId: string,
): Promise<void> {
  const batches = plan.batches.filter((batch) => batch.siteCode === siteCode);
  const last = batches.reduce(
    (latest, { inoculatedOn }) => (inoculatedOn > latest ? inoculatedOn : latest),
    '',
  );
  const recent = new Set(
    batches
      .filter(({ inoculatedOn }) => addDays(inoculatedOn, recentDays) >= last)
      .map(({ spawnLotCode }) => spawnLotCode),
  );
  for (const lot of plan.lots.filter(({ code }) => recent.has(code))) {
    const used = batches
      .filter(({ spawnLotCode }) => spawnLotCode === lot.code)
      .reduce((sum, { spawnGrams }) => sum + spawnGrams, 0);
    await take(receiveSpawnInput, receiveSpawn, {
      spawnLotId: book.spawnByCode.get(lot.code),
      siteId,
      receivedOn: addDays(lot.madeOn, 5),
      mass: used + spareGrams,
    });
  }
}
