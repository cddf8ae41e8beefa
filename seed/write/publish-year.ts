import type { Actor } from '@/lib/access/actor';
import { addDays } from '@/lib/growing/calendar-date';
import { buildReport } from '@/lib/report/build-report.command';
import { buildReportInput, publishReportInput } from '@/lib/report/build-report.input';
import { reportIndicators } from '@/lib/report/content/report-indicators.input';
import { makeLinkInput } from '@/lib/report/link/link.input';
import { makeLink } from '@/lib/report/link/make-link.command';
import { publishReport } from '@/lib/report/publish-report.command';
import { writeWords } from '@/lib/report/write-words.command';
import { writeWordsInput } from '@/lib/report/write-words.input';
import { inOneGo } from './in-one-go';
import { tellStories } from './tell-stories';

const title = 'Larkmoor Growers: the last year';
const words = {
  opening: 'Straw from the valley farms, coffee grounds from the market, and what was picked from both.',
  methods:
    'Sites that cannot heat water keep to cold methods; that is a choice of what they have, not of what is best.',
};

/** Builds and publishes the funder's report of the last year, beside the year before it and with a few words. */
export async function publishYear(coordinator: Actor, today: string): Promise<void> {
  const id = await inOneGo(coordinator, async (take) => {
    const report = await take(buildReportInput, buildReport, {
      title,
      programme: 'From straw to supper',
      from: addDays(today, -364),
      to: today,
      baselineFrom: addDays(today, -729),
      baselineTo: addDays(today, -365),
      indicators: [...reportIndicators],
    });
    await take(writeWordsInput, writeWords, { id: report.id, revision: 1, title, words });
    return report.id;
  });
  await tellStories(coordinator, id, today);
  await inOneGo(coordinator, async (take) => {
    await take(publishReportInput, publishReport, { id });
    await take(makeLinkInput, makeLink, {
      reportId: id,
      forWhom: 'Hollow Oak Foundation',
      language: 'en',
      lastDay: addDays(today, 60),
    });
  });
}
