import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { newId } from '@/lib/base/new-id';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { buildContent } from './build-content';
import type { buildReportInput } from './build-report.input';

/** Builds and stores a report; the funder sees it only once it is published. */
export async function buildReport(
  context: WriteContext,
  input: z.output<typeof buildReportInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, origin, now } = context;
  if (actor.role !== 'coordinator') return notFound;
  const { title, from, to } = input;
  if (to < from) return invalid('to', 'before', { date: from });
  const content = await buildContent(context, { from, to }, now);
  const id = newId();
  await db.report.create({
    data: {
      networkId: actor.networkId,
      id,
      title,
      periodFrom: new Date(`${from}T00:00:00Z`),
      periodTo: new Date(`${to}T00:00:00Z`),
      // A detour by text: the content is plain data, the client's type for JSON wants an index signature.
      content: JSON.parse(JSON.stringify(content)),
      builtAt: now,
      origin,
      createdById: actor.personId,
    },
  });
  return ok({ id });
}
