import 'server-only';
import { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import { asCalendarDate } from '@/lib/records/fields/stored-date';
import { reportIndicators } from './content/report-indicators.input';
import { lockReports } from './lock-reports';
import { reportWords } from './report-words';
import type { reviseReportInput } from './revise-report.input';
import { storeReport } from './store-report';
import { copyStories } from './story/copy-stories';

/**
 * Builds the next version of a published report from the records as they are now: same period, indicators, words and
 * stories. The earlier version stays as it was. A second request answers with the draft that the first one made.
 */
export async function reviseReport(
  context: WriteContext,
  input: z.output<typeof reviseReportInput>,
): Promise<Result<{ id: string }>> {
  const { db, actor } = context;
  if (actor.role !== 'coordinator') return notFound;
  await lockReports(context);
  const earlier = await db.report.findFirst({
    where: { id: input.id, voidedAt: null, publishedAt: { not: null } },
  });
  if (!earlier) return notFound;
  const later = await db.report.findFirst({ where: { followsId: earlier.id, voidedAt: null } });
  if (later) return ok({ id: later.id });
  const { baselineFrom, baselineTo } = earlier;
  const id = await storeReport(context, {
    title: earlier.title,
    programme: earlier.programme,
    period: { from: asCalendarDate(earlier.periodFrom), to: asCalendarDate(earlier.periodTo) },
    baseline:
      baselineFrom && baselineTo
        ? { from: asCalendarDate(baselineFrom), to: asCalendarDate(baselineTo) }
        : undefined,
    indicators: z.array(z.enum(reportIndicators)).parse(earlier.indicators),
    words: reportWords.parse(earlier.words),
    follows: earlier,
  });
  await copyStories(context, earlier.id, id);
  return ok({ id });
}
