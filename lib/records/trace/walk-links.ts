import { joined, type TracedKind, type TraceEnd, type TraceLink } from './trace-link';

export type Walked = {
  /** Links that count, of everything reached. */
  readonly links: readonly TraceLink[];
  /** Links that were taken out and led, or came, from something reached; not those that a link that counts replaces. */
  readonly takenOut: readonly TraceLink[];
};

/** The links of things of one kind, in the direction of the walk. */
type Follow = (kind: TracedKind, ids: readonly string[]) => Promise<readonly TraceLink[]>;

/**
 * Everything that can be reached from one thing over links that count, each thing once however many ways lead to it. What
 * only a voided link leads to is not reached: the link is told, and not followed. Links that a site took along when it
 * withdrew its figures are told among those and followed all the same: what it passed on is still with others.
 */
export async function walkLinks(start: TraceEnd, toward: 'from' | 'to', follow: Follow): Promise<Walked> {
  const reached = new Set([start.id]);
  const links: TraceLink[] = [];
  const takenOut: TraceLink[] = [];
  let edge: readonly TraceEnd[] = [start];
  while (edge.length > 0) {
    const next: TraceEnd[] = [];
    for (const kind of new Set(edge.map((end) => end.kind))) {
      const ids = edge.filter((end) => end.kind === kind).map(({ id }) => id);
      for (const link of await follow(kind, ids)) {
        (link.voided === null ? links : takenOut).push(link);
        const end = link[toward];
        if ((link.voided !== null && !link.withdrawn) || reached.has(end.id)) continue;
        reached.add(end.id);
        next.push(end);
      }
    }
    edge = next;
  }
  const standing = new Set(links.map(joined));
  const told = new Map(
    takenOut.filter((link) => !standing.has(joined(link))).map((link) => [joined(link), link]),
  );
  return { links, takenOut: [...told.values()] };
}
