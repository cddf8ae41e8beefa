import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { chooseSiteMethodsInput } from './choose-site-methods.input';

/** Says which methods a site can use, whatever it has used so far. A list changed meanwhile by somebody else is a conflict. */
export async function chooseSiteMethods(
  context: WriteContext,
  { id, revision, methodIds }: z.output<typeof chooseSiteMethodsInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin } = context;
  if (actor.role === 'member' && !actor.siteIds.includes(id)) return notFound;
  const site = await db.site.findFirst({ where: { id, voidedAt: null, leftAt: null } });
  if (!site) return notFound;
  // Two who save at once come one after the other; the second finds the list changed.
  await db.$executeRaw`select pg_advisory_xact_lock(hashtextextended(${`site-methods ${id}`}, 0))`;
  const methods = await db.method.findMany({ where: { voidedAt: null }, select: { id: true } });
  if (methodIds.some((chosen) => !methods.some((method) => method.id === chosen)))
    return invalid('methodIds', 'not-an-option');
  const rows = await db.siteMethod.findMany({ where: { siteId: id } });
  const current = rows.reduce((sum, row) => sum + row.revision, 0);
  if (current !== revision) return { kind: 'conflict', current };
  for (const method of methods) {
    const available = methodIds.includes(method.id);
    const row = rows.find(({ methodId }) => methodId === method.id);
    if (row === undefined) {
      const place = { networkId: actor.networkId, id: newId(), siteId: id, methodId: method.id };
      await db.siteMethod.create({ data: { ...place, available, origin, createdById: actor.personId } });
    } else if (row.available !== available) {
      await db.siteMethod.updateMany({ where: { id: row.id }, data: { available } });
    }
  }
  return ok({ id });
}
