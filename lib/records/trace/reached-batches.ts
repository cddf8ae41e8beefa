import 'server-only';
import type { ScopedDb } from '@/lib/access/scoped-db';
import { inParts } from './in-parts';
import type { Walked } from './walk-links';

/**
 * Ids of the batches that a walk came to: those that a link that counts leads to, and those behind figures that a site
 * withdrew, unless they were withdrawn themselves.
 */
export async function reachedBatches(
  db: ScopedDb,
  { links, takenOut }: Walked,
  toward: 'from' | 'to',
): Promise<string[]> {
  const ends = (some: Walked['links']) =>
    some.flatMap((link) => (link[toward].kind === 'batch' ? [link[toward].id] : []));
  const reached = new Set(ends(links));
  const behind = ends(takenOut.filter(({ withdrawn }) => withdrawn)).filter((id) => !reached.has(id));
  const standing = await inParts([...new Set(behind)], (part) =>
    db.batch.findMany({ where: { id: { in: part }, voidedAt: null }, select: { id: true } }),
  );
  return [...reached, ...standing.map(({ id }) => id)];
}
