import 'server-only';
import type { ReadContext } from '@/lib/access/context';
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
  const { links, takenOut } = await walkLinks({ kind, id }, 'to', (of, ids) =>
    readLinks(context, 'on', of, ids),
  );
  const reached = links.flatMap(({ to }) => (to.kind === 'batch' ? [to.id] : []));
  const batches = await readTracedBatches(context, [...new Set(reached)]);
  return whereItWent({ links, takenOut, batches, harvests: [] });
}
