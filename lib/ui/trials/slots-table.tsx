import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { TrialView } from '@/lib/records/trial/get-trial.query';
import type { SlotView } from '@/lib/records/trial/read-slots';
import { formatDate } from '../format/date-text';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';

/** The drawn list by site, with what became of each run. */
export async function SlotsTable({ trial, own }: { trial: TrialView; own: boolean }) {
  const t = await getTranslations('trials');
  const locale = await getLocale();
  const running = trial.state === 'running';
  const state = (slot: SlotView) => {
    const kinds = slot.departures.map((kind) => t(`departure.${kind}`));
    if (slot.told !== null) kinds.push(t('list.told', { words: slot.told }));
    if (slot.batch === null)
      return [slot.missing ? t('list.missing') : slot.next ? t('list.next') : '', ...kinds]
        .filter((text) => text !== '')
        .join('; ');
    return kinds.length === 0 ? t('list.asDrawn') : kinds.join('; ');
  };
  return (
    <DataTable
      caption={t(own ? 'list.ownCaption' : 'list.caption')}
      rows={trial.slots}
      rowKey={({ id }) => id}
      groupOf={({ siteName }) => siteName}
      columns={[
        {
          key: 'place',
          header: t('list.columns.place'),
          cell: ({ place, block }) => t('list.round', { place, block }),
        },
        { key: 'arm', header: t('list.columns.arm'), cell: ({ arm }) => arm },
        {
          key: 'batch',
          header: t('list.columns.batch'),
          cell: (slot) => (
            <>
              {slot.batch === null ? null : (
                <>
                  <Link href={`/batches/${slot.batch.id}` as Route}>{slot.batch.code}</Link>{' '}
                  <span className="quiet">{formatDate(slot.batch.inoculatedOn, locale)}</span>{' '}
                </>
              )}
              {running ? (
                <Link className="no-print" href={`/trials/slots/${slot.id}` as Route}>
                  {t(slot.batch === null ? 'list.fill' : 'list.change')}
                  <span className="visually-hidden">{`: ${slot.siteName}, ${slot.place}`}</span>
                </Link>
              ) : null}
            </>
          ),
        },
        {
          key: 'planned',
          header: t('list.columns.planned'),
          cell: ({ plannedOn }) => formatDate(plannedOn, locale),
        },
        { key: 'state', header: t('list.columns.state'), cell: state },
      ]}
    />
  );
}
