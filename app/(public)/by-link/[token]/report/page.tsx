import type { Metadata, Route } from 'next';
import { redirect } from 'next/navigation';
import { getTranslations } from 'next-intl/server';
import { formatDate } from '@/lib/ui/format/date-text';
import { lastWholeDay } from '@/lib/ui/format/last-whole-day';
import { DocumentView } from '@/lib/ui/report/document-view';
import { TakeAlong } from '@/lib/ui/report/take-along';
import { takeOpening } from '../link-limit';
import { loadShared } from '../load-shared';

export const metadata: Metadata = { robots: { index: false, follow: false }, referrer: 'no-referrer' };

/** A published report, to whoever holds a link to it. */
export default async function SharedReportPage({ params }: PageProps<'/by-link/[token]/report'>) {
  const { token } = await params;
  const busy = takeOpening(token) > 0;
  const shared = busy ? undefined : await loadShared(token, 'page');
  if (busy) return <p>{(await getTranslations('links'))('busy')}</p>;
  // The address before this one says with the right status that the link opens nothing.
  if (!shared) redirect(`/by-link/${token}` as Route);
  const { document, link, locale } = shared;
  const t = await getTranslations({ locale, namespace: 'links' });
  const until = formatDate(lastWholeDay(new Date(link.expiresAt), link.timeZone), locale);
  return (
    <DocumentView
      document={document}
      locale={locale}
      pictureAt={(story) => `/by-link/${token}/pictures/${story}`}
    >
      <p className="quiet">{t('sharedNote', { date: until })}</p>
      <TakeAlong base={`/by-link/${token}`} locale={locale} />
    </DocumentView>
  );
}
