import { z } from 'zod';
import type { Actor } from '@/lib/access/actor';
import { takeSetupLink } from '@/lib/access/setup-link';
import { hashToken, newToken } from '@/lib/access/token';
import { connectTo } from '@/lib/database/startup-check';
import { addDefaults } from '@/lib/records/network/add-defaults.command';
import { actorOf } from './actor-of';
import { inOneGo } from './in-one-go';

type NewNetwork = {
  readonly name: string;
  readonly code: string;
  readonly coordinator: { readonly name: string; readonly email: string };
  readonly password: string;
};

export const storyZone = 'America/Chicago';

/** A network with its defaults, started the way a first coordinator does it: by a one-time link. */
export async function makeNetwork({ name, code, coordinator, password }: NewNetwork): Promise<Actor> {
  const token = newToken();
  const owner = await connectTo('DATABASE_OWNER_URL', process.env.DATABASE_OWNER_URL);
  await owner.query("select app.make_setup_link($1, '1 hour')", [hashToken(token)]);
  await owner.end();
  const made = await takeSetupLink(token, {
    ...coordinator,
    password,
    networkName: name,
    networkCode: code,
    timeZone: storyZone,
    region: 'en-US',
  });
  if (made.kind !== 'ok') throw new Error(`network ${code}: ${JSON.stringify(made)}`);
  const actor = await actorOf(made.value.personId);
  await inOneGo(actor, (take) => take(z.object({}), addDefaults, {}));
  return actor;
}
