import type { Actor } from '@/lib/access/actor';
import { addDays } from '@/lib/growing/calendar-date';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { reportIndicators } from '@/lib/report/content/report-indicators.input';
import { publishReport } from '@/lib/report/publish-report.command';
import { inOneGo } from './in-one-go';

/** Builds and publishes the funder's report of the last year. */
export async function publishYear(coordinator: Actor, today: string): Promise<void> {
  await inOneGo(coordinator, async (take) => {
    const { id } = await take(buildReportInput, buildReport, {
      title: 'Larkmoor Growers: the last year',
      from: addDays(today, -365),
      to: today,
      indicators: [...reportIndicators],
    });
    await take(publishReportInput, publishReport, { id });
  });
}
