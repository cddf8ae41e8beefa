import 'server-only';
import type { Actor } from './actor';
import { actorOfJob } from './actor-of-job';
import { readAs } from './scoped-db';

/**
 * Who reads the records of all sites for what the server works out from them: a coordinator themselves; for a member one of the
 * network's coordinators. Undefined where the network has none, and for funders.
 *
 * What is read with it is for models only: store what came out of it by site, and show a member what their own rights then
 * read of it.
 */
export async function networkReader(actor: Actor): Promise<Actor | undefined> {
  if (actor.role === 'coordinator') return actor;
  const [row] = await readAs(
    actor,
    ({ db }) => db.$queryRaw<{ id: string | null }[]>`select app.coordinator_here()::text as id`,
  );
  return row?.id == null ? undefined : (await actorOfJob(row.id, actor.networkId))?.actor;
}
