import type { Actor } from '@/lib/access/actor';
import { newNetwork } from '@/lib/export/package/new-network';

/** A network of its own without a record, and its coordinator. */
export async function emptyNetwork(code: string): Promise<Actor> {
  const made = await newNetwork(
    { name: 'A copy', code, timeZone: 'America/Chicago', region: 'en-US' },
    {
      name: 'Juniper Vale',
      email: `juniper-${code.toLowerCase()}@example.org`,
    },
  );
  return made.actor;
}
