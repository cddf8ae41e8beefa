import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSettings } from '@/lib/records/settings/list-settings.query';
import { Heading } from '@/lib/ui/page/heading';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { windowOfMethod } from '@/lib/ui/settings/window-of-method';
import { DataTable } from '@/lib/ui/table/data-table';

const days = (range: { from: number; to: number } | null) =>
  range === null ? '–' : `${range.from}–${range.to}`;

export default async function SettingsPage() {
  const actor = await requireActor('coordinator');
  const settings = await readAs(actor, listSettings);
  if (!settings) return <NotThere />;
  const t = await getTranslations('settings');
  const words = await getTranslations('vocabulary');
  const { language } = actor;
  const methodWindow = await windowOfMethod(actor.temperatureUnit);
  return (
    <>
      <Heading text={t('heading')} />
      <p>{t('intro')}</p>
      <p>
        <Link href={'/settings/suitability' as Route}>{t('suitability.heading')}</Link>
      </p>
      <p>
        <Link href={'/settings/export' as Route}>{(await getTranslations('export.archive'))('link')}</Link>
      </p>
      <p>
        <Link href={'/import' as Route}>{t('bringIn')}</Link>
      </p>
      <p>
        <Link href={'/settings/money' as Route}>{t('money')}</Link>
      </p>
      <DataTable
        caption={t('methods')}
        rows={settings.methods}
        rowKey={(row) => row.id}
        columns={[
          {
            key: 'name',
            header: t('columns.method'),
            cell: (row) => <Link href={`/settings/methods/${row.id}`}>{row[language]}</Link>,
          },
          { key: 'window', header: t('columns.window'), cell: (row) => methodWindow(row) },
        ]}
      />
      <DataTable
        caption={t('windows')}
        rows={settings.windows}
        rowKey={(row) => row.id}
        columns={[
          {
            key: 'species',
            header: t('columns.species'),
            cell: (row) => (
              <Link href={`/settings/windows/${row.id}`}>
                {language === 'es' ? row.speciesEs : row.speciesEn},{' '}
                {words(`containerKind.${row.container}`).toLocaleLowerCase()}
              </Link>
            ),
          },
          {
            key: 'contamination',
            header: t('columns.contaminationDays'),
            numeric: true,
            cell: (row) => row.contaminationDays,
          },
          { key: 'yield', header: t('columns.yieldDays'), numeric: true, cell: (row) => row.yieldDays },
          {
            key: 'look',
            header: t('columns.firstLook'),
            numeric: true,
            cell: (row) => row.expected.firstLook ?? '–',
          },
          {
            key: 'colonised',
            header: t('columns.colonised'),
            numeric: true,
            cell: (row) => days(row.expected.colonised),
          },
          { key: 'pins', header: t('columns.pins'), numeric: true, cell: (row) => days(row.expected.pins) },
          {
            key: 'harvest',
            header: t('columns.firstHarvest'),
            numeric: true,
            cell: (row) => days(row.expected.firstHarvest),
          },
          {
            key: 'flushes',
            header: t('columns.betweenFlushes'),
            numeric: true,
            cell: (row) => days(row.expected.betweenFlushes),
          },
        ]}
      />
      <DataTable
        caption={t('materials')}
        rows={settings.materials}
        rowKey={(row) => row.id}
        columns={[
          {
            key: 'name',
            header: t('columns.material'),
            cell: (row) => <Link href={`/settings/materials/${row.id}`}>{row[language]}</Link>,
          },
          {
            key: 'received',
            header: t('columns.received'),
            unit: '%',
            numeric: true,
            cell: (row) => row.receivedMoisturePercent ?? '–',
          },
          {
            key: 'drained',
            header: t('columns.drained'),
            cell: (row) =>
              row.drained.length === 0
                ? '–'
                : row.drained.map(({ methodEn, methodEs, percent }) => (
                    <span key={methodEn} className="block">
                      {`${language === 'es' ? methodEs : methodEn} ${percent}\u00a0%`}
                    </span>
                  )),
          },
        ]}
      />
      <DataTable
        caption={t('species')}
        rows={settings.species}
        rowKey={(row) => row.id}
        columns={[
          {
            key: 'name',
            header: t('columns.species'),
            cell: (row) => <Link href={`/settings/species/${row.id}`}>{row[language]}</Link>,
          },
          { key: 'scientific', header: t('columns.scientific'), cell: (row) => <i>{row.scientificName}</i> },
        ]}
      />
    </>
  );
}
