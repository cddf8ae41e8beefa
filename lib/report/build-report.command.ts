import 'server-only';
import type { z } from 'zod';
import type { WriteContext } from '@/lib/access/context';
import { invalid, notFound, ok, type Result } from '@/lib/base/result';
import type { buildReportInput } from './build-report.input';
import { lockReports } from './lock-reports';
import { storeReport } from './store-report';

/** Builds the first version of a report. */
export async function buildReport(
  context: WriteContext,
  input: z.output<typeof buildReportInput>,
): Promise<Result<{ id: string }>> {
  if (context.actor.role !== 'coordinator') return notFound;
  const { title, programme, from, to, baselineFrom, baselineTo, indicators } = input;
  if (to < from) return invalid('to', 'before', { date: from });
  if (baselineFrom === null && baselineTo !== null) return invalid('baselineFrom', 'missing');
  if (baselineFrom !== null && baselineTo === null) return invalid('baselineTo', 'missing');
  if (baselineFrom !== null && baselineTo !== null && baselineTo < baselineFrom)
    return invalid('baselineTo', 'before', { date: baselineFrom });
  if (baselineTo !== null && baselineTo >= from)
    return invalid('baselineTo', 'baseline-before', { date: from });
  const baseline =
    baselineFrom === null || baselineTo === null ? undefined : { from: baselineFrom, to: baselineTo };
  await lockReports(context);
  return ok({
    id: await storeReport(context, {
      title,
      programme,
      period: { from, to },
      baseline,
      indicators,
      words: {},
    }),
  });
}
