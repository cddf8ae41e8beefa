import type { Actor } from '@/lib/access/actor';
import type { StoryPlan } from '../plan/story-plan';
import type { LotBook } from './add-lots';
import { inOneGo } from './in-one-go';
import { receiveRecentSpawn } from './receive-recent-spawn';
import { recordBatch } from './record-batch';
import { recordRun } from './record-run';
import { batchesThatGoOn, recordSecondLife } from './record-second-life';

const batchesPerGo = 10;

/** What went into a load before it took up water, from what it filled: dry matter of 30 % filled is 88 % before. */
function loadOf(plan: StoryPlan, runKey: string): number | '' {
  const filled = plan.batches.filter((batch) => batch.runKey === runKey).map(({ wetGrams }) => wetGrams ?? 0);
  const grams = filled.reduce((sum, wet) => sum + wet, 0) * (0.3 / 0.88);
  return grams === 0 ? '' : Math.round(grams / 500) * 500;
}

/** Records the runs and batches of one site as one of its members. */
export async function recordSite(
  member: Actor,
  plan: StoryPlan,
  book: LotBook,
  siteCode: string,
  siteId: string,
): Promise<number> {
  const batches = plan.batches.filter((batch) => batch.siteCode === siteCode);
  await inOneGo(member, (take) => receiveRecentSpawn(take, plan, book, siteCode, siteId));
  const goingOn = batchesThatGoOn(batches);
  const runIds = new Map<string, string>();
  for (let from = 0; from < batches.length; from += batchesPerGo) {
    const some = batches.slice(from, from + batchesPerGo);
    await inOneGo(member, async (take) => {
      for (const batch of some) {
        const run = plan.runs.find((one) => one.key === batch.runKey);
        if (run && !runIds.has(run.key)) {
          const methodId = book.choices.methods.find((method) => method.kind === run.method)?.id ?? '';
          runIds.set(run.key, await recordRun(take, run, siteId, methodId, loadOf(plan, run.key)));
        }
        const goesOn = goingOn.has(batch);
        const runId = run ? (runIds.get(run.key) ?? null) : null;
        const batchId = await recordBatch(take, book, batch, siteId, runId, goesOn);
        if (goesOn) await recordSecondLife(take, book, batch, { batchId, siteId });
      }
    });
  }
  return batches.length;
}
