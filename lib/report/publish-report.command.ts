import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { publishReportInput } from './build-report.input';

/** Lets funders and members of the network read a report. */
export async function publishReport(
  { db, actor, now }: WriteContext,
  input: z.output<typeof publishReportInput>,
): Promise<Result<{ id: string }>> {
  if (actor.role !== 'coordinator') return notFound;
  const { count } = await db.report.updateMany({
    where: { id: input.id, voidedAt: null, publishedAt: null },
    data: { publishedAt: now },
  });
  const there = count === 1 || (await db.report.count({ where: { id: input.id, voidedAt: null } })) === 1;
  return there ? ok({ id: input.id }) : notFound;
}
