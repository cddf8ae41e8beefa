import type { CostGroup, PerKilogram } from '@/lib/analysis/costs/cost-group';
import { massIn } from '@/lib/growing/per-mass-unit';
import { formatNumber } from '../format/number-text';
import { formatWorkMinutes } from '../format/work-text';
import { DataTable } from '../table/data-table';
import type { CostsWords } from './costs-words';

type Props = {
  readonly by: 'method' | 'site';
  readonly groups: readonly CostGroup[];
  readonly words: CostsWords;
};

/** Cost and margin of a kilogram or a pound by method or site, in the order of their names. */
export function CostsTable({ by, groups, words }: Props) {
  const { t, locale, massUnit, currency, amount, perUnit, limits } = words;
  const name = by === 'method' ? words.method : words.site;
  const rows = [...groups].sort((a, b) => name(a.key).localeCompare(name(b.key), locale));
  const figure = (shown: PerKilogram) =>
    shown.kind === 'cannot' ? (
      <span className="cell-reason">{t(`cannot.${shown.reason}`)}</span>
    ) : (
      <>
        {amount(perUnit(shown.minorPerKg))}{' '}
        {shown.interval.kind === 'interval' ? (
          <>
            <br className="cell-break" />
            <span className="quiet">({limits(shown)})</span>
          </>
        ) : (
          <span className="cell-reason">{limits(shown)}</span>
        )}
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
          key: 'cost',
          header: t('columns.cost', { unit: massUnit }),
          unit: currency,
          numeric: true,
          cell: ({ cost }) => figure(cost),
        },
        {
          key: 'margin',
          header: t('columns.margin', { unit: massUnit }),
          unit: currency,
          numeric: true,
          cell: ({ margin, fullBatches }) => (
            <>
              {figure(margin)}
              {margin.kind === 'figure' && margin.batches !== fullBatches ? (
                <span className="cell-reason">{t('marginOf', { batches: margin.batches })}</span>
              ) : null}
            </>
          ),
        },
        {
          key: 'batches',
          header: t('columns.batches'),
          numeric: true,
          cell: ({ fullBatches, batches }) => t('fullOf', { full: fullBatches, all: batches }),
        },
        {
          key: 'picked',
          header: t('columns.picked'),
          unit: massUnit,
          numeric: true,
          cell: ({ freshGrams }) => formatNumber(massIn(massUnit, freshGrams), locale, 1),
        },
        {
          key: 'labour',
          header: t('columns.labour', { unit: massUnit }),
          unit: 'min',
          numeric: true,
          cell: ({ labourMinutesPerKg }) =>
            labourMinutesPerKg === null ? '–' : formatWorkMinutes(perUnit(labourMinutesPerKg), locale),
        },
        { key: 'missing', header: t('columns.missing'), cell: (group) => words.missing(group) },
      ]}
    />
  );
}
