import { dateInZone } from '@/lib/growing/calendar-date';
import type { FunderReportContent } from '@/lib/report/content/funder-report';
import { sitesLeftSentences } from '../../leaving/sites-left-sentences';
import type { ReportTongue } from './report-tongue';

/** Which sites stand behind a report: those that agreed to be named, how many did not, and how many have left. */
export function sitesParagraphs(
  { sites, builtAt }: Pick<FunderReportContent, 'sites' | 'builtAt'>,
  { t, date, locale, timeZone }: ReportTongue,
): string[] {
  if (sites === undefined) return [];
  const { named, anonymous, leftOut, left } = sites;
  const names = new Intl.ListFormat(locale, { type: 'conjunction' }).format(named);
  return [
    ...(named.length === 0
      ? [t('sites.unnamed', { count: anonymous })]
      : [t('sites.named', { names, count: anonymous })]),
    ...(leftOut === 0 ? [] : [t('sites.leftOut', { count: leftOut })]),
    ...sitesLeftSentences(left, (key, values) =>
      t(`sites.${key === 'site.leftCounted' ? 'leftCounted' : 'leftWithdrawn'}`, values),
    ),
    t('sites.agreed', { date: date(dateInZone(new Date(builtAt), timeZone)) }),
  ];
}
