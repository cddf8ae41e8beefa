import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { trialResultContent } from './trial-result-content';

/** The published result of a trial as it was stored; undefined where there is none that the reader may see. */
export async function getTrialResult({ db }: ReadContext, trialId: string) {
  const row = await db.trialResult.findFirst({ where: { trialId } });
  if (!row) return undefined;
  return {
    content: trialResultContent.parse(row.content),
    publishedAt: row.publishedAt.toISOString(),
    shownToFunders: row.shownToFundersAt !== null,
  };
}
