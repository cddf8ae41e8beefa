import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { addSiteInput } from './site.input';
import { siteDatesProblem, siteRow } from './site-row';

export async function addSite(
  context: WriteContext,
  input: z.output<typeof addSiteInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin } = context;
  if (actor.role !== 'coordinator') return notFound;
  const id = input.id ?? newId();
  if (await db.site.findFirst({ where: { id, createdById: actor.personId } })) return ok({ id });
  const problem = siteDatesProblem(input);
  if (problem) return problem;
  if (await db.site.findFirst({ where: { code: input.code } }))
    return invalid('code', 'code-taken', { code: input.code });
  await db.site.create({
    data: { networkId: actor.networkId, id, ...siteRow(input), origin, createdById: actor.personId },
  });
  return ok({ id });
}
