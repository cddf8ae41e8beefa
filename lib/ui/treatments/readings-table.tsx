import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { TemperatureUnit } from '@/lib/database/generated/enums';
import type { TreatmentView } from '@/lib/records/treatment/get-treatment.query';
import { formatInstant } from '../format/instant-text';
import { formatTemperature } from '../format/temperature-text';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';

type Props = {
  readonly runId: string;
  readonly readings: TreatmentView['readings'];
  readonly timeZone: string;
  readonly temperatureUnit: TemperatureUnit;
};

/** Readings of a run in the order of time. */
export async function ReadingsTable({ runId, readings, timeZone, temperatureUnit }: Props) {
  const t = await getTranslations('treatments');
  const common = await getTranslations('common');
  const words = await getTranslations('vocabulary.readingPlace');
  const locale = await getLocale();
  if (readings.length === 0) return <p>{t('noReadings')}</p>;
  return (
    <DataTable
      caption={t('readingsCaption')}
      rows={readings}
      rowKey={(reading) => reading.id}
      columns={[
        {
          key: 'at',
          header: t('columns.readAt'),
          cell: (reading) => formatInstant(reading.at, timeZone, locale),
        },
        { key: 'place', header: t('columns.place'), cell: (reading) => words(reading.place) },
        {
          key: 'celsius',
          header: t('columns.temperature'),
          numeric: true,
          cell: (reading) =>
            reading.celsius === null ? '–' : formatTemperature(reading.celsius, temperatureUnit, locale),
        },
        { key: 'ph', header: t('columns.ph'), numeric: true, cell: (reading) => reading.ph ?? '–' },
        {
          key: 'void',
          header: common('void'),
          cell: (reading) => (
            <Link href={`/void/treatment-reading/${reading.id}?back=/treatments/${runId}` as Route}>
              {common('void')}
            </Link>
          ),
        },
      ]}
    />
  );
}
