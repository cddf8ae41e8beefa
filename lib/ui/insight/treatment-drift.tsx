import type { Route } from 'next';
import type { DriftPoint, SiteRuns } from '@/lib/analysis/treatment-question/treatments-answer';
import { type Panel, SmallMultiples } from '../chart/small-multiples';
import { formatDate } from '../format/date-text';
import { formatInterval } from '../format/interval-text';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import type { InsightWords } from './insight-words';
import { lastSignal } from './last-signal';
import { TreatmentSiteTable } from './treatment-site-table';

/** Each site's own runs in the order of their days: how many held, and whether the time held drifts. */
export function TreatmentDrift({ sites, words }: { sites: readonly SiteRuns[]; words: InsightWords }) {
  const { t, names, number, locale, language } = words;
  const sorted = [...sites].sort(
    (a, b) =>
      names.siteName(a.siteId).localeCompare(names.siteName(b.siteId), language) ||
      names.methodName(a.methodId).localeCompare(names.methodName(b.methodId), language),
  );
  const verdict = ({ drift, outside, runs }: SiteRuns) => {
    if (drift === null) return t('treatments.drift.tooFew');
    const signal = lastSignal(drift);
    if (signal?.signal == null)
      return outside === 0
        ? t('treatments.drift.steady')
        : t('treatments.drift.steadyShort', { outside: number(outside), runs: number(runs) });
    return t(`treatments.drift.${signal.signal}`, { since: formatDate(signal.on, locale) });
  };
  const charted = sorted.flatMap(({ drift, ...site }) => (drift === null ? [] : [{ ...site, drift }]));
  const changed = ({ drift, outside }: (typeof charted)[number]) =>
    outside > 0 || lastSignal(drift) !== undefined;
  const told = charted.filter(changed);
  const most = Math.max(0, ...charted.map(({ drift }) => drift.length - 1));
  const panelOf = ({ siteId, methodId, drift, ...site }: (typeof charted)[number]): Panel => {
    const line = (key: string, kind: 'course' | 'limit', of: (point: DriftPoint) => number) => ({
      key,
      kind,
      points: drift.map((point, index) => ({ x: most - (drift.length - 1) + index, y: of(point) })),
    });
    return {
      key: `${siteId} ${methodId}`,
      title: `${names.siteName(siteId)}, ${words.inSentence(methodId)}`,
      text: verdict({ siteId, methodId, drift, ...site }),
      lines: [
        line('low', 'limit', ({ low }) => low),
        line('high', 'limit', ({ high }) => high),
        line('average', 'course', ({ average }) => average),
      ],
      marks: drift.map(({ runId, heldShare, standing }, index) => ({
        key: runId,
        x: most - (drift.length - 1) + index,
        y: heldShare,
        series: standing === 'outside' ? 2 : 0,
      })),
    };
  };
  const panels = charted.map(panelOf);
  const steady = charted.filter((site) => !changed(site)).map(panelOf);
  const charts = (shown: readonly Panel[]) => (
    <SmallMultiples
      title={t('treatments.drift.title')}
      reading={t('treatments.drift.reading')}
      panels={shown}
      scaledBy={panels}
      tick={(value) => `${number(value, 1)} ×`}
      from={0}
      to={most}
      ends={[t('treatments.drift.earlier'), t('treatments.drift.latest')]}
      lines={[{ at: 1, text: t('treatments.drift.least') }]}
      note={t('treatments.drift.note')}
    />
  );
  return (
    <>
      <h2>{t('treatments.driftHeading')}</h2>
      {told.length === 0 ? null : charts(told.map(panelOf))}
      {panels.length > 0 && told.length === 0 ? <p>{t('treatments.drift.noneChanged')}</p> : null}
      {steady.length === 0 ? null : (
        <details className="printed-fold">
          <summary>{t('treatments.drift.steadyPanels', { count: steady.length })}</summary>
          {charts(steady)}
        </details>
      )}
      <TreatmentSiteTable sites={sorted} verdict={verdict} words={words} />
      {told.map(({ siteId, methodId, drift }) => (
        <details key={`${siteId} ${methodId}`}>
          <summary>
            {t('treatments.runsOf', { site: names.siteName(siteId), method: words.inSentence(methodId) })}
          </summary>
          <RunsTable points={drift} words={words} />
        </details>
      ))}
    </>
  );
}

function RunsTable({ points, words }: { points: readonly DriftPoint[]; words: InsightWords }) {
  const { t, number, locale } = words;
  return (
    <DataTable
      caption={t('treatments.runsTable')}
      rows={[...points].reverse()}
      rowKey={({ runId }) => runId}
      columns={[
        {
          key: 'run',
          header: t('treatments.columns.run'),
          cell: ({ runId, code }) => <Link href={`/treatments/${runId}` as Route}>{code}</Link>,
        },
        { key: 'on', header: t('treatments.columns.on'), cell: ({ on }) => formatDate(on, locale) },
        {
          key: 'held',
          header: t('treatments.columns.held'),
          unit: '×',
          numeric: true,
          cell: ({ heldShare }) => number(heldShare, 2),
        },
        {
          key: 'average',
          header: t('treatments.columns.average'),
          unit: '×',
          numeric: true,
          cell: ({ average, low, high }) => `${number(average, 2)} (${formatInterval(low, high, locale, 2)})`,
        },
        {
          key: 'standing',
          header: t('treatments.columns.standing'),
          cell: ({ standing }) => t(`treatments.standing.${standing}`),
        },
      ]}
    />
  );
}
