import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { formatDate } from '@/lib/ui/format/date-text';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { DataTable } from '@/lib/ui/table/data-table';
import { loadTrial } from '../load-trial';

/** The drawn list to pin up in the shed: one table a site, with room to write. */
export default async function SheetPage({ params }: PageProps<'/trials/[id]/sheet'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const trial = await loadTrial(actor, id);
  if (!trial || trial.slots.length === 0) return <NotThere />;
  const t = await getTranslations('trials');
  const locale = await getLocale();
  const sites = [...new Map(trial.slots.map((slot) => [slot.siteId, slot.siteName]))];
  const made = trial.slots.flatMap(({ batch }) => batch ?? []);
  return (
    <>
      <Heading text={t('sheet.heading', { title: trial.title })} />
      <p>{t('sheet.how')}</p>
      {made.length === 0 ? null : (
        <p className="no-print">
          <Link href={`/labels?${new URLSearchParams(made.map((batch) => ['batch', batch.id]))}` as Route}>
            {t('sheet.labels')}
          </Link>
        </p>
      )}
      {sites.map(([siteId, siteName]) => (
        <section key={siteId} className="allocation-sheet">
          <DataTable
            caption={siteName}
            rows={trial.slots.filter((slot) => slot.siteId === siteId)}
            rowKey={(slot) => slot.id}
            columns={[
              {
                key: 'place',
                header: t('list.columns.place'),
                cell: ({ place, block }) => t('list.round', { place, block }),
              },
              { key: 'arm', header: t('list.columns.arm'), cell: ({ arm }) => arm },
              {
                key: 'planned',
                header: t('list.columns.planned'),
                cell: ({ plannedOn }) => formatDate(plannedOn, locale),
              },
              {
                key: 'done',
                header: t('sheet.columns.done'),
                cell: ({ batch }) => (batch === null ? '' : formatDate(batch.inoculatedOn, locale)),
              },
              { key: 'code', header: t('sheet.columns.code'), cell: ({ batch }) => batch?.code ?? '' },
              {
                key: 'otherwise',
                header: t('sheet.columns.otherwise'),
                cell: ({ told }) => told ?? '',
              },
            ]}
          />
        </section>
      ))}
      {trial.seed === null ? null : <p className="quiet">{t('sheet.seed', { seed: trial.seed })}</p>}
    </>
  );
}
