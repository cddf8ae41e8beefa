import type { Actor } from '@/lib/access/actor';
import type { StoryPlan } from '../plan/story-plan';
import type { LotBook } from './add-lots';
import { inOneGo } from './in-one-go';
import { recordBatch } from './record-batch';
import { recordRun } from './record-run';

const batchesPerGo = 10;

/** Records the runs and batches of one site as one of its members. */
export async function recordSite(
  member: Actor,
  plan: StoryPlan,
  book: LotBook,
  siteCode: string,
  siteId: string,
): Promise<number> {
  const batches = plan.batches.filter((batch) => batch.siteCode === siteCode);
  const runIds = new Map<string, string>();
  for (let from = 0; from < batches.length; from += batchesPerGo) {
    const some = batches.slice(from, from + batchesPerGo);
    await inOneGo(member, async (take) => {
      for (const batch of some) {
        const run = plan.runs.find((one) => one.key === batch.runKey);
        if (run && !runIds.has(run.key)) {
          const methodId = book.choices.methods.find((method) => method.kind === run.method)?.id ?? '';
          runIds.set(run.key, await recordRun(take, run, siteId, methodId));
        }
        await recordBatch(take, book, batch, siteId, run ? (runIds.get(run.key) ?? null) : null);
      }
    });
  }
  return batches.length;
}
