import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import type { LivesTogether } from '@/lib/analysis/single-batch/lives-together';
import { readLives } from '@/lib/analysis/single-batch/read-lives';
import type { BatchPage } from '@/lib/records/batch/get-batch.query';

/** First and later lives of the batch, and of each batch whose units it was given. */
export async function livesOf(
  context: ReadContext,
  { batch, sources, secondLives }: BatchPage,
): Promise<LivesTogether[]> {
  const firsts = [
    ...sources.filter(({ visible }) => visible).map(({ id }) => id),
    ...(secondLives.length > 0 ? [batch.id] : []),
  ];
  const lives: LivesTogether[] = [];
  for (const id of firsts) {
    const one = await readLives(context, id, new Date());
    if (one !== undefined) lives.push(one);
  }
  return lives;
}
