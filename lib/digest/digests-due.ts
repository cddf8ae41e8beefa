import 'server-only';
import { asNobody } from '@/lib/access/scoped-db';

/** A digest that is still to be sent: to whom, of which network, for the week that begins on that Monday. */
export type DueDigest = { readonly networkId: string; readonly personId: string; readonly week: string };

/** The database answers for all networks, ids only; each digest is then made and recorded as the person themselves. */
export function digestsDue(now: Date): Promise<DueDigest[]> {
  return asNobody(
    (db) => db.$queryRaw<DueDigest[]>`
      select network_id::text as "networkId", person_id::text as "personId", week::text as week
      from app.digests_due(${now})`,
  );
}
