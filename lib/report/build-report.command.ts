import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { notFound, ok, type Result } from '@/lib/base/result';
import type { buildReportInput } from './build-report.input';
import { lockReports } from './lock-reports';
import { reportDays } from './report-days';
import { storeReport } from './store-report';

/** Builds the first version of a report. */
export async function buildReport(
  context: WriteContext,
  input: z.output<typeof buildReportInput>,
): Promise<Result<{ id: string }>> {
  if (context.actor.role !== 'coordinator') return notFound;
  const { title, programme, indicators } = input;
  const days = reportDays(input);
  if (days.kind !== 'ok') return days;
  await lockReports(context);
  return ok({
    id: await storeReport(context, {
      title,
      programme,
      ...days.value,
      indicators,
      words: {},
    }),
  });
}
