import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import { asCalendarDate } from '@/lib/records/fields/stored-date';
import type { publishReportInput } from './build-report.input';
import { funderReportContent } from './content/funder-report';
import { reportGround } from './content/ground';
import { partsThatTell } from './content/parts-that-tell';
import { readEarlierReports } from './earlier-reports';

/**
 * Lets funders and members of the network read a report; from then on it is fixed. A draft was held against the reports
 * of its period that were published when it was built; beside one published since it must not tell of few sites either.
 */
export async function publishReport(
  context: WriteContext,
  input: z.output<typeof publishReportInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor, now } = context;
  if (actor.role !== 'coordinator') return notFound;
  const draft = await db.report.findFirst({
    where: { id: input.id, voidedAt: null },
    include: { ground: true },
  });
  if (!draft) return notFound;
  if (draft.publishedAt !== null) return ok({ id: draft.id });
  if (await tellsBesideLater(context, draft)) return invalid('', 'report-built-before');
  await db.report.updateMany({
    where: { id: draft.id, voidedAt: null, publishedAt: null },
    data: { publishedAt: now },
  });
  return ok({ id: draft.id });
}

type Draft = {
  readonly periodFrom: Date;
  readonly periodTo: Date;
  readonly builtAt: Date;
  readonly content: unknown;
  readonly ground: { readonly ground: unknown } | null;
};

async function tellsBesideLater(
  context: WriteContext,
  { periodFrom, periodTo, builtAt, content, ground }: Draft,
): Promise<boolean> {
  const period = { from: asCalendarDate(periodFrom), to: asCalendarDate(periodTo) };
  const later = await readEarlierReports(context, { period }, builtAt);
  const built = {
    content: funderReportContent.parse(content),
    ground: reportGround.parse(ground?.ground ?? {}),
  };
  return later.some((one) => partsThatTell(one, built).size > 0);
}
