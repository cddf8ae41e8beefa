import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { readAs } from '@/lib/access/scoped-db';
import { listLinks } from '@/lib/report/link/list-links.query';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { LinkTable } from '@/lib/ui/report/link-table';
import { loadCoordinatorsReport } from '../load-coordinators-report';
import { withdrawLinkAction } from './actions';

export default async function LinksPage({ params }: PageProps<'/reports/[id]/links'>) {
  const { id } = await params;
  const { actor, report } = await loadCoordinatorsReport(id);
  if (!report) return <NotThere />;
  const t = await getTranslations('links');
  const links = await readAs(actor, (context) => listLinks(context, id));
  const published = report.publishedAt !== undefined;
  return (
    <>
      <Heading text={t('heading')} />
      <p className="lead">
        <Link href={`/reports/${id}`}>{report.title}</Link>
      </p>
      <p>{t('intro')}</p>
      {published ? (
        <p>
          <ButtonLink href={`/reports/${id}/links/new` as Route}>{t('add')}</ButtonLink>
        </p>
      ) : (
        <p>{t('draft')}</p>
      )}
      {links.length === 0 ? (
        <EmptyState text={t('none')} />
      ) : (
        <LinkTable
          links={links}
          timeZone={actor.networkTimeZone}
          now={new Date()}
          withdraw={withdrawLinkAction}
        />
      )}
      <p>
        <Link href={`/reports/${id}`}>{t('backToReport')}</Link>
      </p>
    </>
  );
}
