import 'server-only';
import type { ReadContext } from '@/lib/access/context';

type Wanted = { readonly siteId: string; readonly name: string; readonly but: string };

/** Whether another place of the site has the name, whatever its capitals. */
export async function placeNameTaken({ db }: ReadContext, { siteId, name, but }: Wanted): Promise<boolean> {
  const other = await db.conditionPlace.findFirst({
    where: { siteId, voidedAt: null, id: { not: but }, name: { equals: name, mode: 'insensitive' } },
  });
  return other !== null;
}
