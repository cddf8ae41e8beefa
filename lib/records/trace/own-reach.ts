import type { TraceLink } from './trace-link';
import type { Walked } from './walk-links';

/**
 * Of what a walk on from something came to, the ids of what that thing itself went into, second lives included, without what
 * only lots of spawn made from it went into: a sound lot is not to be taken for a bad one that it was made from.
 */
export function ownReach(start: string, { links, takenOut }: Walked): ReadonlySet<string> {
  const onward = new Map<string, string[]>();
  for (const { from, to } of [...links, ...takenOut.filter(({ withdrawn }) => withdrawn)]) {
    if (to.kind === 'spawn-lot') continue;
    const known = onward.get(from.id);
    if (known) known.push(to.id);
    else onward.set(from.id, [to.id]);
  }
  const own = new Set([start]);
  // A set is gone through with what is added to it meanwhile.
  for (const id of own) for (const next of onward.get(id) ?? []) own.add(next);
  return own;
}

/** The links of what something itself went into, or those of lots made from it, and to these lots. */
export function linksOf(
  part: 'own' | 'made',
  links: readonly TraceLink[],
  own: ReadonlySet<string>,
): readonly TraceLink[] {
  const isOwn = ({ from, to }: TraceLink) => own.has(from.id) && to.kind !== 'spawn-lot';
  return links.filter((link) => isOwn(link) === (part === 'own'));
}

/** Whether a lot of spawn was made from it. */
export const spawnWasMade = (links: readonly TraceLink[]): boolean =>
  links.some(({ to }) => to.kind === 'spawn-lot');
