import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { linksOf, ownReach, spawnWasMade } from './own-reach';
import { reachedBatches } from './reached-batches';
import { readLinks } from './read-links';
import { readTracedBatches } from './read-traced-batches';
import type { TracedKind } from './trace-link';
import { walkLinks } from './walk-links';
import { type WhereItWent, whereItWent } from './where-it-went';

export type LotWent = {
  /** What became of the batches that it went into itself, and of their second lives. */
  readonly own: WhereItWent;
  /** The same of lots of spawn made from it; null where none was. */
  readonly made: WhereItWent | null;
  /** The latest day on which a batch was started with it, of those that are to be seen. */
  readonly lastUsedOn: string | null;
};

/** What became of a lot, added up by site, without the harvests one by one: nothing where nothing of it is to be seen. */
export async function getWhereabouts(context: ReadContext, kind: TracedKind, id: string): Promise<LotWent> {
  const walked = await walkLinks({ kind, id }, 'to', (of, ids) => readLinks(context, 'on', of, ids));
  const batches = await readTracedBatches(context, await reachedBatches(context.db, walked, 'to'));
  const own = ownReach(id, walked);
  const part = (of: 'own' | 'made') =>
    whereItWent({
      batches: batches.filter((batch) => own.has(batch.id) === (of === 'own')),
      links: linksOf(of, walked.links, own),
      harvests: [],
    });
  const started = new Set(walked.links.flatMap(({ from, to }) => (from.id === id ? [to.id] : [])));
  return {
    own: part('own'),
    made: spawnWasMade(walked.links) ? part('made') : null,
    lastUsedOn: batches.findLast((batch) => started.has(batch.id))?.inoculatedOn ?? null,
  };
}
