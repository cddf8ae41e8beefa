import type { CostGroup, PerKilogram } from '@/lib/analysis/costs/cost-group';
import { formatNumber } from '../format/number-text';
import { DataTable } from '../table/data-table';
import type { CostsWords } from './costs-words';

type Props = {
  readonly by: 'method' | 'site';
  readonly groups: readonly CostGroup[];
  readonly words: CostsWords;
};

/** Cost and margin of a kilogram by method or site, in the order of their names. */
export function CostsTable({ by, groups, words }: Props) {
  const { t, locale, money, limits } = words;
  const name = by === 'method' ? words.method : words.site;
  const rows = [...groups].sort((a, b) => name(a.key).localeCompare(name(b.key), locale));
  const figure = (shown: PerKilogram) =>
    shown.kind === 'cannot' ? (
      <span className="quiet">{t(`cannot.${shown.reason}`)}</span>
    ) : (
      <>
        {money(shown.minorPerKg)} <span className="quiet">({limits(shown)})</span>
      </>
    );
  return (
    <DataTable
      caption={t(by === 'method' ? 'byMethod' : 'bySite')}
      rows={rows}
      rowKey={({ key }) => key}
      columns={[
        { key: 'name', header: t(`columns.${by}`), cell: ({ key }) => name(key) },
        {
          key: 'batches',
          header: t('columns.batches'),
          numeric: true,
          cell: ({ fullBatches, batches }) => t('fullOf', { full: fullBatches, all: batches }),
        },
        {
          key: 'picked',
          header: t('columns.picked'),
          numeric: true,
          cell: ({ freshGrams }) => formatNumber(freshGrams / 1000, locale, 1),
        },
        { key: 'cost', header: t('columns.cost'), numeric: true, cell: ({ cost }) => figure(cost) },
        {
          key: 'margin',
          header: t('columns.margin'),
          numeric: true,
          cell: ({ margin }) => (
            <>
              {figure(margin)}
              {margin.kind === 'figure' ? (
                <span className="quiet"> {t('marginOf', { batches: margin.batches })}</span>
              ) : null}
            </>
          ),
        },
        {
          key: 'labour',
          header: t('columns.labour'),
          numeric: true,
          cell: ({ labourMinutesPerKg }) =>
            labourMinutesPerKg === null ? '–' : formatNumber(labourMinutesPerKg, locale, 0),
        },
        { key: 'missing', header: t('columns.missing'), cell: (group) => words.missing(group) },
      ]}
    />
  );
}
