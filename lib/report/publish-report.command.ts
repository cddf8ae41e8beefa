import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { publishReportInput } from './build-report.input';

/**
 * Lets funders and members of the network read a report; from then on it is fixed. A draft was held against the reports
 * of its period that were published when it was built: one published since makes it too old to follow.
 */
export async function publishReport(
  { db, actor, now }: WriteContext,
  input: z.output<typeof publishReportInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const draft = await db.report.findFirst({ where: { id: input.id, voidedAt: null } });
  if (!draft) return notFound;
  if (draft.publishedAt !== null) return ok({ id: draft.id });
  const { periodFrom, periodTo, builtAt } = draft;
  const since = await db.report.count({
    where: { periodFrom, periodTo, publishedAt: { gt: builtAt }, id: { not: draft.id } },
  });
  if (since > 0) return invalid('', 'report-built-before');
  await db.report.updateMany({
    where: { id: draft.id, voidedAt: null, publishedAt: null },
    data: { publishedAt: now },
  });
  return ok({ id: draft.id });
}
