import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type {
  SeasonLoss,
  StandingLoss,
  StartLoss,
  TreatmentsAnswer,
} from '@/lib/analysis/treatment-question/treatments-answer';
import { DotIntervalChart } from '../chart/dot-interval-chart';
import { toChartRow } from '../chart/to-chart-row';
import { Figure } from '../figure/figure';
import { FigureCell } from '../figure/figure-cell';
import { FigureHistory } from '../figure/figure-history';
import { formatTemperature, type TemperatureUnit } from '../format/temperature-text';
import { DataTable } from '../table/data-table';
import type { InsightWords } from './insight-words';
import { seasonWithMonths } from './season-words';

type Props = {
  readonly answer: TreatmentsAnswer;
  readonly words: InsightWords;
  readonly temperatureUnit: TemperatureUnit;
};

/** What batches lost, by how far inside or outside its window their run lay, by season, and by the temperature at the start. */
export function TreatmentLosses({ answer, words, temperatureUnit }: Props) {
  const { t, view, names, number, locale, language } = words;
  const loss = <Row,>(key: string, header: string, of: (row: Row) => ShownFigure) => ({
    key,
    header,
    unit: '%',
    numeric: true,
    cell: (row: Row) => <FigureCell view={view(of(row))} />,
  });
  const label = ({ standing }: StandingLoss) => t(`treatments.standing.${standing}`);
  const starts = [...answer.starts].sort((a, b) =>
    names.methodName(a.methodId).localeCompare(names.methodName(b.methodId), language),
  );
  const warmth = (celsius: number) => formatTemperature(celsius, temperatureUnit, locale);
  const band = ({ fromCelsius, belowCelsius }: StartLoss) => {
    if (fromCelsius !== null && belowCelsius !== null)
      return t('treatments.band.between', { low: warmth(fromCelsius), high: warmth(belowCelsius) });
    if (fromCelsius !== null) return t('treatments.band.from', { low: warmth(fromCelsius) });
    return belowCelsius === null
      ? t('treatments.band.none')
      : t('treatments.band.below', { high: warmth(belowCelsius) });
  };
  return (
    <>
      {answer.difference === null ? null : (
        <div className="figures">
          <Figure label={t('treatments.difference')} view={view(answer.difference)} />
        </div>
      )}
      <DotIntervalChart
        title={t('treatments.chart')}
        reading={t('treatments.chartReading')}
        unit="%"
        rows={answer.standings.map((row, series) =>
          toChartRow({ key: row.standing, label: label(row), series }, view(row.loss)),
        )}
      />
      <DataTable
        caption={t('treatments.table')}
        rows={answer.standings}
        rowKey={({ standing }) => standing}
        columns={[
          { key: 'standing', header: t('treatments.columns.standing'), cell: label },
          {
            key: 'runs',
            header: t('treatments.columns.runs'),
            numeric: true,
            cell: ({ runs }) => number(runs),
          },
          {
            key: 'batches',
            header: t('treatments.columns.batches'),
            numeric: true,
            cell: (row) => number(row.loss.n.batches),
          },
          loss<StandingLoss>('loss', t('treatments.columns.loss'), (row) => row.loss),
        ]}
      />
      {answer.standings.map((row) => (
        <FigureHistory key={row.standing} view={view(row.loss)} of={label(row)} />
      ))}
      <p className="quiet">
        {t('treatments.standingNote')} {t('treatments.withoutRun', { count: answer.batchesWithoutRun })}
      </p>
      <h2>{t('treatments.seasonHeading')}</h2>
      <DataTable
        caption={t('treatments.seasonTable')}
        rows={answer.seasons}
        rowKey={({ season }) => season}
        columns={[
          {
            key: 'season',
            header: t('treatments.columns.season'),
            cell: ({ season, quarters }) => seasonWithMonths(season, quarters, words),
          },
          loss<SeasonLoss>('inside', t('treatments.columns.inside'), (row) => row.inside),
          loss<SeasonLoss>('outside', t('treatments.columns.outside'), (row) => row.outside),
        ]}
      />
      <p className="quiet">{t('treatments.seasonNote')}</p>
      <h2>{t('treatments.startHeading')}</h2>
      <DataTable
        caption={t('treatments.startTable')}
        rows={starts}
        rowKey={({ methodId, fromCelsius, belowCelsius }) => `${methodId} ${fromCelsius} ${belowCelsius}`}
        groupOf={({ methodId }) => names.methodName(methodId)}
        columns={[
          { key: 'band', header: t('treatments.columns.start'), cell: band },
          {
            key: 'runs',
            header: t('treatments.columns.runs'),
            numeric: true,
            cell: ({ runs }) => number(runs),
          },
          loss<StartLoss>('loss', t('treatments.columns.loss'), (row) => row.loss),
        ]}
      />
      <p className="quiet">{t('treatments.startNote')}</p>
    </>
  );
}
