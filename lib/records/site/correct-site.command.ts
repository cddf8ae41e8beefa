import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { correctSiteInput } from './site.input';
import { siteDatesProblem, siteRow } from './site-row';

export async function correctSite(
  context: WriteContext,
  input: z.output<typeof correctSiteInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor } = context;
  if (actor.role !== 'coordinator') return notFound;
  const site = await db.site.findFirst({ where: { id: input.id, voidedAt: null } });
  if (!site) return notFound;
  const problem = siteDatesProblem(input);
  if (problem) return problem;
  const twin = await db.site.findFirst({ where: { code: input.code, id: { not: input.id } } });
  if (twin) return invalid('code', 'code-taken', { code: input.code });
  const changed = await db.site.updateMany({
    where: { id: input.id, revision: input.revision },
    data: siteRow(input),
  });
  return changed.count === 1 ? ok({ id: input.id }) : { kind: 'conflict', current: site.revision };
}
