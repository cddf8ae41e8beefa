import { isId } from '@/lib/records/fields/id-field';
import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { getTrial, type TrialView } from '@/lib/records/trial/get-trial.query';

/** The trial that an address names; undefined when it is not there, not the actor's, or the address is no id. */
export async function loadTrial(actor: Actor, id: string): Promise<TrialView | undefined> {
  if (!isId(id)) return undefined;
  return readAs(actor, (context) => getTrial(context, id, new Date()));
}
