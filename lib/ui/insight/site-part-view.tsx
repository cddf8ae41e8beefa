import type { Route } from 'next';
import type {
  CoursePoint,
  SiteCourse,
  SitePart,
  SiteSignal,
} from '@/lib/analysis/site-question/sites-answer';
import { PlotChart, type PlotLine } from '../chart/plot-chart';
import { Figure } from '../figure/figure';
import { formatDate } from '../format/date-text';
import { formatInterval } from '../format/interval-text';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import type { InsightWords } from './insight-words';
import { percentText } from './percent-text';

type Props = { readonly part: SitePart; readonly site: string; readonly words: InsightWords };

/** How one site does, for its coordinator and for its own members alike. */
export function SitePartView({ part, site, words }: Props) {
  const { t, view } = words;
  const { shrunk, typical } = part;
  const sentence =
    shrunk.kind === 'figure' && typical.kind === 'figure'
      ? t(`site.${part.verdict}`, {
          site,
          percent: percentText(shrunk.value, words),
          typical: percentText(typical.value, words),
        })
      : t('site.unknown', { site });
  return (
    <>
      <p className="answer-sentence">{sentence}</p>
      <p>
        {t(`site.next.${part.verdict}`)}{' '}
        <Link href={`/questions/next?site=${part.siteId}` as Route}>{t('site.toNext', { site })}</Link>
      </p>
      <div className="figures">
        <Figure label={t('site.raw')} view={view(part.raw)} />
        <Figure label={t('site.shrunk')} view={view(shrunk)} />
        <Figure label={t('site.typical')} view={view(typical)} />
      </div>
      <h2>{t('site.course')}</h2>
      {part.course === null ? (
        <p>{t('sites.tooFew')}</p>
      ) : (
        <Course course={part.course} signals={part.signals} words={words} />
      )}
    </>
  );
}

type CourseProps = {
  readonly course: SiteCourse;
  readonly signals: readonly SiteSignal[];
  readonly words: InsightWords;
};

function Course({ course, signals, words }: CourseProps) {
  const { t, number, locale, language } = words;
  const { points, centrePercent } = course;
  const last = points.length - 1;
  const line = (key: string, kind: PlotLine['kind'], of: (point: CoursePoint) => number): PlotLine => ({
    key,
    kind,
    points: points.map((point, index) => ({ x: index, y: of(point) })),
  });
  const sideOf = (side: SiteSignal['side']) => t(side === 'above' ? 'site.up' : 'site.down');
  const begun = new Set(signals.map(({ batchId }) => batchId));
  const join = new Intl.ListFormat(language, { type: 'conjunction' });
  const when = join.format(signals.map(({ on, side }) => `${formatDate(on, locale)} (${sideOf(side)})`));
  return (
    <>
      <p>
        {signals.length === 0
          ? t('site.steady', { count: points.length })
          : t('site.signalled', { when, every: course.falseAlarmEvery })}
      </p>
      {signals
        .filter(({ shared }) => shared)
        .map(({ batchId, on, others, of }) => (
          <p key={batchId}>{t('site.signalledTogether', { when: formatDate(on, locale), others, of })}</p>
        ))}
      <PlotChart
        title={t('site.chart')}
        reading={t('site.chartReading')}
        unit="%"
        along={t('site.along')}
        from={0}
        to={last}
        alongTicks={[0, Math.round(last / 2), last].map((at) => ({
          at,
          text: formatDate(points[at]?.on ?? '', locale),
        }))}
        lines={[
          line('low', 'limit', ({ low }) => low),
          line('high', 'limit', ({ high }) => high),
          line('centre', 'centre', () => centrePercent),
          line('average', 'course', ({ value }) => value),
        ]}
        marks={points.flatMap((point, index) =>
          begun.has(point.batchId)
            ? [
                {
                  key: point.batchId,
                  x: index,
                  y: point.value,
                  series: point.signal === 'above' ? 2 : 4,
                  label: formatDate(point.on, locale),
                },
              ]
            : [],
        )}
        note={t('site.chartNote', {
          every: number(course.falseAlarmEvery),
          correlation: number(course.correlation, 2),
        })}
      />
      <DataTable
        caption={t('site.table')}
        rows={points}
        rowKey={({ batchId }) => batchId}
        columns={[
          {
            key: 'on',
            header: t('site.columns.on'),
            cell: ({ batchId, on }) => (
              <Link href={`/batches/${batchId}` as Route}>{formatDate(on, locale)}</Link>
            ),
          },
          {
            key: 'found',
            header: t('site.columns.found'),
            numeric: true,
            cell: ({ events, units }) => t('site.ofUnits', { events, units }),
          },
          {
            key: 'average',
            header: t('site.columns.average'),
            unit: '%',
            numeric: true,
            cell: ({ value }) => number(value, 1),
          },
          {
            key: 'limits',
            header: t('site.columns.limits'),
            unit: '%',
            numeric: true,
            cell: ({ low, high }) => formatInterval(low, high, locale),
          },
          {
            key: 'signal',
            header: t('site.columns.signal'),
            cell: ({ signal }) => (signal === null ? '–' : sideOf(signal)),
          },
        ]}
      />
    </>
  );
}
