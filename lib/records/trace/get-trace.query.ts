import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { nameEnds, nameOutOfSight } from './name-ends';
import { linksOf, ownReach, spawnWasMade } from './own-reach';
import { reachedBatches } from './reached-batches';
import { readLinks } from './read-links';
import { readTracedBatches } from './read-traced-batches';
import { readTracedHarvests } from './read-traced-harvests';
import type { TracedKind, TraceEnd } from './trace-link';
import type { Trace, TracePart, TraceSide } from './trace-view';
import { type Walked, walkLinks } from './walk-links';
import { whereItWent } from './where-it-went';

/**
 * Where a lot, a run, a batch or a harvest came from and where it went, as far as the actor can see: lots made from lots,
 * batches, their second lives through any number of sites, and the crates they were picked into.
 */
export async function getTrace(
  context: ReadContext,
  kind: TracedKind,
  id: string,
): Promise<Trace | undefined> {
  const { db } = context;
  const origin: TraceEnd = { kind, id };
  const start = (await nameEnds(db, [origin])).get(id);
  if (start === undefined) return undefined;
  const back = await walkLinks(origin, 'from', (of, ids) => readLinks(context, 'back', of, ids));
  const on = await walkLinks(origin, 'to', (of, ids) => readLinks(context, 'on', of, ids));
  const all = [...back.links, ...back.takenOut, ...on.links, ...on.takenOut];
  const names = await nameEnds(
    db,
    all.flatMap(({ from, to }) => [from, to]),
  );
  const pairs = all.flatMap(({ from, to }) => [
    ...(names.has(to.id) ? [] : [{ seen: from.id, hidden: to.id }]),
    ...(names.has(from.id) ? [] : [{ seen: to.id, hidden: from.id }]),
  ]);
  for (const [hidden, name] of await nameOutOfSight(db, pairs)) names.set(hidden, name);
  const side = await sideOf(context, on, 'to', origin);
  const own = ownReach(id, on);
  return {
    start,
    names: names.set(id, start),
    back: await sideOf(context, back, 'from', origin),
    on: side,
    own: await partOf(context, side, 'own', own),
    made: spawnWasMade(on.links) ? await partOf(context, side, 'made', own) : null,
  };
}

/** What it went into itself, or what lots of spawn made from it went into, with the crates of these batches. */
async function partOf(
  { db }: ReadContext,
  side: TraceSide,
  part: 'own' | 'made',
  own: ReadonlySet<string>,
): Promise<TracePart> {
  const batches = side.batches.filter(({ id }) => own.has(id) === (part === 'own'));
  const links = linksOf(part, side.links, own);
  const crates = new Set(links.flatMap(({ to }) => (to.kind === 'weighing' ? [to.id] : [])));
  const ids = new Set(batches.map(({ id }) => id));
  const harvests =
    part === 'own' && !spawnWasMade(side.links)
      ? side.harvests
      : await readTracedHarvests(db, [...crates], ids);
  return { batches, harvests, went: whereItWent({ batches, harvests, links }) };
}

/** What was reached in one direction; a start that is a batch counts among the batches on its way on. */
async function sideOf(
  context: ReadContext,
  walked: Walked,
  toward: 'from' | 'to',
  start: TraceEnd,
): Promise<TraceSide> {
  const reached = new Set(await reachedBatches(context.db, walked, toward));
  if (toward === 'to' && start.kind === 'batch') reached.add(start.id);
  const batches = [...reached];
  const weighings = walked.links.flatMap(({ to }) => (to.kind === 'weighing' ? [to.id] : []));
  if (start.kind === 'weighing') weighings.push(start.id);
  return {
    ...walked,
    batches: await readTracedBatches(context, batches),
    harvests: toward === 'from' ? [] : await readTracedHarvests(context.db, [...new Set(weighings)], reached),
  };
}
