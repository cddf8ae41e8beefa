import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listReports } from '@/lib/report/list-reports.query';
import { formatDate } from '@/lib/ui/format/date-text';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { Status } from '@/lib/ui/page/status';
import { DataTable } from '@/lib/ui/table/data-table';

export default async function ReportsPage() {
  const actor = await requireActor();
  const reports = await readAs(actor, listReports);
  const t = await getTranslations('report');
  const locale = await getLocale();
  const coordinates = actor.role === 'coordinator';
  return (
    <>
      <Heading text={t('listHeading')} />
      {coordinates ? (
        <p>
          <ButtonLink href="/reports/new">{t('new')}</ButtonLink>
        </p>
      ) : null}
      {reports.length === 0 ? (
        <EmptyState text={coordinates ? t('emptyCoordinator') : t('emptyReader')} />
      ) : (
        <DataTable
          caption={t('listCaption')}
          rows={reports}
          rowKey={(report) => report.id}
          columns={[
            {
              key: 'title',
              header: t('columns.title'),
              cell: (report) => (
                <>
                  <Link href={`/reports/${report.id}`}>{report.title}</Link>
                  <span className="cell-reason">
                    {t('period', {
                      from: formatDate(report.from, locale),
                      to: formatDate(report.to, locale),
                    })}
                  </span>
                </>
              ),
            },
            {
              key: 'version',
              header: t('columns.version'),
              numeric: true,
              cell: (report) => report.version,
            },
            {
              key: 'state',
              header: t('columns.state'),
              cell: (report) =>
                report.published ? (
                  <Status tone="good" word={t('published')} />
                ) : (
                  <Status tone="watch" word={t('draft')} />
                ),
            },
          ]}
        />
      )}
    </>
  );
}
