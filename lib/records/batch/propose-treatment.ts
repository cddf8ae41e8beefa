import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { BatchRow } from './batch-include';
import type { LocalName } from './batch-view';

/** A run that ended longer ago is not what is being spawned now. Common practice: within a day or two. */
const freshDays = 14;
/** One load often fills several batches: the run of the repeated batch itself, while it is this fresh. */
const sameLoadDays = 3;
const millisecondsPerDay = 86_400_000;

/** A run to spawn from: never spawned yet, or the one that the repeated batch was filled from. */
export type ProposedTreatment = {
  readonly runId: string;
  readonly code: string;
  readonly methodId: string;
  readonly method: LocalName;
  readonly endedAt: Date;
  readonly spawned: boolean;
};

/**
 * The treatment run to propose for a repeat of a batch: the latest of its site that has ended and was spawned into no
 * batch, one of the same method first; else the batch's own run while its load is fresh; else none. A batch that was
 * not treated is proposed none.
 */
export async function proposeTreatment(
  { db }: ReadContext,
  batch: Pick<BatchRow, 'siteId' | 'components'>,
  now: Date,
): Promise<ProposedTreatment | null> {
  const [first] = batch.components;
  if (first === undefined || first.method.kind === 'untreated') return null;
  const since = (days: number) => new Date(now.getTime() - days * millisecondsPerDay);
  const ended = await db.treatmentRun.findMany({
    where: {
      siteId: batch.siteId,
      voidedAt: null,
      endedAt: { gte: since(freshDays), lte: now },
      components: { none: { voidedAt: null, batch: { voidedAt: null } } },
    },
    include: { method: true },
    orderBy: [{ endedAt: 'desc' }, { id: 'desc' }],
    take: 20,
  });
  const unspawned = ended.find(({ methodId }) => methodId === first.methodId) ?? ended[0];
  const run =
    unspawned ??
    (first.treatmentRunId === null
      ? null
      : await db.treatmentRun.findFirst({
          where: { id: first.treatmentRunId, voidedAt: null, endedAt: { gte: since(sameLoadDays) } },
          include: { method: true },
        }));
  if (run === null || run.endedAt === null) return null;
  return {
    runId: run.id,
    code: run.code,
    methodId: run.methodId,
    method: { en: run.method.nameEn, es: run.method.nameEs },
    endedAt: run.endedAt,
    spawned: unspawned === undefined,
  };
}
