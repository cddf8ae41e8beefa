import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { trialResultContent } from './trial-result-content';

/** Published results that the reader may see, latest first. */
export async function listTrialResults({ db }: ReadContext) {
  const rows = await db.trialResult.findMany({ orderBy: { publishedAt: 'desc' } });
  return rows.map(({ trialId, title, publishedAt, content }) => ({
    trialId,
    title,
    question: trialResultContent.parse(content).question,
    publishedAt: publishedAt.toISOString(),
  }));
}
