import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { PlaceView } from '@/lib/records/condition/get-place.query';
import { formatInstant } from '../format/instant-text';
import { formatNumber } from '../format/number-text';
import type { TemperatureUnit } from '../format/temperature-text';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import { measureText } from './measure-text';

type Props = {
  readonly place: PlaceView;
  readonly path: string;
  readonly temperatureUnit: TemperatureUnit;
};

/** What was read by hand and taken in lately, each of it to be voided. */
export async function PlaceTables({ place, path, temperatureUnit }: Props) {
  const t = await getTranslations('conditions');
  const common = await getTranslations('common');
  const words = await getTranslations('vocabulary.conditionMeasure');
  const locale = await getLocale();
  const when = (at: Date) => formatInstant(at, place.site.timeZone, locale);
  const remove = (kind: string, id: string) => (
    <Link href={`/void/${kind}/${id}?back=${path}` as Route}>{common('void')}</Link>
  );
  return (
    <>
      {place.typed.length === 0 ? null : (
        <>
          <h2>{t('typedHeading')}</h2>
          <DataTable
            caption={t('typedCaption')}
            rows={place.typed}
            rowKey={({ id }) => id}
            columns={[
              { key: 'at', header: t('columns.at'), cell: ({ at }) => when(at) },
              { key: 'measure', header: t('columns.measure'), cell: ({ measure }) => words(measure) },
              {
                key: 'value',
                header: t('columns.value'),
                numeric: true,
                cell: ({ measure, value }) => measureText(measure, value, temperatureUnit, locale),
              },
              { key: 'void', header: common('void'), cell: ({ id }) => remove('condition-reading', id) },
            ]}
          />
        </>
      )}
      {place.imports.length === 0 ? null : (
        <>
          <h2>{t('importsHeading')}</h2>
          <DataTable
            caption={t('importsCaption')}
            rows={place.imports}
            rowKey={({ id }) => id}
            columns={[
              { key: 'taken', header: t('columns.taken'), cell: ({ at }) => when(at) },
              {
                key: 'span',
                header: t('columns.span'),
                cell: ({ firstAt, lastAt }) => `${when(firstAt)} – ${when(lastAt)}`,
              },
              {
                key: 'added',
                header: t('columns.added'),
                numeric: true,
                cell: ({ added }) => formatNumber(added, locale, 0),
              },
              { key: 'void', header: common('void'), cell: ({ id }) => remove('condition-import', id) },
            ]}
          />
        </>
      )}
    </>
  );
}
