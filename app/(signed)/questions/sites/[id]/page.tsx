import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { readSitePage } from '@/lib/analysis/site-question/read-site-page';
import { readShortMethods } from '@/lib/analysis/treatment-question/read-short-methods';
import { formatInstant } from '@/lib/ui/format/instant-text';
import { insightWords } from '@/lib/ui/insight/insight-words';
import { ShortMethodsView } from '@/lib/ui/insight/short-methods-view';
import { SitePartView } from '@/lib/ui/insight/site-part-view';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';

export default async function SitePage({ params }: PageProps<'/questions/sites/[id]'>) {
  const actor = await requireActor('coordinator', 'member');
  const { id } = await params;
  const now = new Date();
  const page = await readAs(actor, (context) => readSitePage(context, id, now));
  if (!page) return <NotThere />;
  const { siteId, filter } = page;
  const short = await readAs(actor, (context) => readShortMethods(context, siteId, filter, now));
  const t = await getTranslations('insight');
  const words = await insightWords(actor, page);
  const site = words.names.siteName(siteId);
  const { stored } = page;
  return (
    <>
      <Heading text={t('site.heading', { site })} />
      <ShortMethodsView short={short} reader={actor} words={words} />
      {stored === undefined ? (
        <EmptyState text={t('site.notYet')} />
      ) : (
        <>
          <SitePartView part={stored.result} site={site} words={words} />
          <p className="quiet">
            {t('fit.fittedAt', {
              when: formatInstant(new Date(stored.fittedAt), actor.networkTimeZone, words.locale),
            })}
          </p>
        </>
      )}
      {actor.role === 'coordinator' ? (
        <p className="no-print">
          {t('site.share')} <Link href={'/questions/sites' as Route}>{t('site.all')}</Link>
        </p>
      ) : null}
    </>
  );
}
