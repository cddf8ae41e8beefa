import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { reachedBatches } from './reached-batches';
import { readLinks } from './read-links';
import { readTracedBatches } from './read-traced-batches';
import type { TracedKind } from './trace-link';
import { walkLinks } from './walk-links';
import { type WhereItWent, whereItWent } from './where-it-went';

/** What became of a lot, added up by site, without the harvests one by one: nothing where nothing of it is to be seen. */
export async function getWhereabouts(
  context: ReadContext,
  kind: TracedKind,
  id: string,
): Promise<WhereItWent> {
  const walked = await walkLinks({ kind, id }, 'to', (of, ids) => readLinks(context, 'on', of, ids));
  const batches = await readTracedBatches(context, await reachedBatches(context.db, walked, 'to'));
  return whereItWent({ ...walked, batches, harvests: [] });
}
