import 'server-only';
import type { ReadContext } from '@/lib/access/context';
import { isId } from '../fields/id-field';

/** The methods of the network and whether a site can use each: as said there, otherwise whether it has used it. */
export async function getSiteMethods({ db, actor }: ReadContext, siteId: string) {
  if (!isId(siteId)) return undefined;
  if (actor.role === 'member' && !actor.siteIds.includes(siteId)) return undefined;
  const site = await db.site.findFirst({ where: { id: siteId, voidedAt: null, leftAt: null } });
  if (!site) return undefined;
  const methods = await db.method.findMany({ where: { voidedAt: null }, orderBy: { nameEn: 'asc' } });
  const said = await db.siteMethod.findMany({ where: { siteId } });
  const used = await db.batch.findMany({
    where: { siteId, voidedAt: null, methodId: { not: null } },
    distinct: ['methodId'],
    select: { methodId: true },
  });
  return {
    site: { id: site.id, name: site.name },
    /** How often the list has been changed; 0 while nobody has said anything. */
    revision: said.reduce((sum, row) => sum + row.revision, 0),
    methods: methods.map(({ id, nameEn, nameEs }) => {
      const isUsed = used.some(({ methodId }) => methodId === id);
      const row = said.find(({ methodId }) => methodId === id);
      return { id, en: nameEn, es: nameEs, used: isUsed, available: row?.available ?? isUsed };
    }),
  };
}
