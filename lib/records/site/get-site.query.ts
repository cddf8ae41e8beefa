import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { isId } from '../fields/id-field';
import { type SiteView, siteView } from './site-view';

export async function getSite({ db }: ReadContext, id: string): Promise<SiteView | undefined> {
  const row = isId(id) && (await db.site.findFirst({ where: { id } }));
  return row ? siteView(row) : undefined;
}
