import 'server-only';
import type { Actor } from '@/lib/access/actor';
import { readAs } from '@/lib/access/scoped-db';
import { getPlace, type PlaceView } from '@/lib/records/condition/get-place.query';
import { isId } from '@/lib/records/fields/id-field';

/** The place of an address, if it is one of that site and the actor's to see. */
export async function loadPlace(
  actor: Actor,
  address: { readonly id: string; readonly place: string },
  now: Date,
): Promise<PlaceView | undefined> {
  if (!isId(address.place)) return undefined;
  const place = await readAs(actor, (context) => getPlace(context, address.place, now));
  return place?.site.id === address.id ? place : undefined;
}
