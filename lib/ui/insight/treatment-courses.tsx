import type {
  CourseWindow,
  SiteRuns,
  TreatmentsAnswer,
} from '@/lib/analysis/treatment-question/treatments-answer';
import { celsiusToFahrenheit } from '@/lib/growing/temperature-units';
import { type Panel, SmallMultiples } from '../chart/small-multiples';
import { formatDuration } from '../format/duration-text';
import { formatTemperature, type TemperatureUnit } from '../format/temperature-text';
import type { InsightWords } from './insight-words';

type Props = {
  readonly answer: TreatmentsAnswer;
  readonly words: InsightWords;
  readonly temperatureUnit: TemperatureUnit;
};

/** The courses of the latest runs of each site, method by method, against the window. */
export function TreatmentCourses({ answer, words, temperatureUnit }: Props) {
  const { t, names, language } = words;
  const drawn = answer.windows
    .filter(({ kind }) => kind !== 'ferment')
    .map((window) => ({
      window,
      sites: answer.sites
        .filter(
          ({ methodId, courses }) =>
            methodId === window.methodId && courses.some(({ points }) => points.length > 1),
        )
        .sort((a, b) => names.siteName(a.siteId).localeCompare(names.siteName(b.siteId), language)),
    }))
    .filter(({ sites }) => sites.length > 0)
    .sort((a, b) =>
      names.methodName(a.window.methodId).localeCompare(names.methodName(b.window.methodId), language),
    );
  if (drawn.length === 0) return null;
  return (
    <>
      <h2>{t('treatments.coursesHeading')}</h2>
      {drawn.map(({ window, sites }) => (
        <MethodCourses
          key={window.methodId}
          window={window}
          sites={sites}
          words={words}
          temperatureUnit={temperatureUnit}
        />
      ))}
    </>
  );
}

type MethodProps = Omit<Props, 'answer'> & {
  readonly window: CourseWindow;
  readonly sites: readonly SiteRuns[];
};

function MethodCourses({ window, sites, words, temperatureUnit }: MethodProps) {
  const { t, names, locale, number } = words;
  const heat = window.kind === 'heat';
  const inUnit = (value: number) =>
    heat && temperatureUnit === 'fahrenheit' ? celsiusToFahrenheit(value) : value;
  const text = (value: number) =>
    heat
      ? formatTemperature(value, temperatureUnit, locale)
      : t('treatments.ph', { value: number(value, 1) });
  const minutes = sites.flatMap(({ courses }) =>
    courses.flatMap(({ points }) => points.map(([minute]) => minute)),
  );
  const longest = Math.max(window.least, ...minutes);
  const panels = sites.map((site): Panel => {
    const short = site.courses.filter((course) => course.short).length;
    return {
      key: site.siteId,
      title: names.siteName(site.siteId),
      text: t('treatments.panel', { short, count: site.courses.length }),
      lines: site.courses.map((course) => ({
        key: course.runId,
        kind: 'course',
        series: course.short ? 2 : 0,
        points: course.points.map(([minute, value]) => ({ x: minute, y: inUnit(value) })),
      })),
      marks: [],
    };
  });
  const charts = (shown: readonly Panel[]) => (
    <SmallMultiples
      title={t(heat ? 'treatments.heatTitle' : 'treatments.phTitle', {
        method: names.methodName(window.methodId),
      })}
      reading={t('treatments.coursesReading', { least: formatDuration(window.least, locale) })}
      panels={shown}
      scaledBy={panels}
      tick={(value) =>
        heat ? `${number(value)} ${temperatureUnit === 'celsius' ? '°C' : '°F'}` : number(value, 1)
      }
      from={0}
      to={longest}
      ends={[formatDuration(0, locale), formatDuration(longest, locale)]}
      lines={window.low === null ? [] : [{ at: inUnit(window.low), text: text(window.low) }]}
      {...(window.low === null
        ? {}
        : { band: { low: inUnit(window.low), high: window.high === null ? null : inUnit(window.high) } })}
    />
  );
  const short = new Set(
    sites.flatMap(({ siteId, courses }) => (courses.some((course) => course.short) ? [siteId] : [])),
  );
  const [fallen, held] = [
    panels.filter(({ key }) => short.has(key)),
    panels.filter(({ key }) => !short.has(key)),
  ];
  return (
    <>
      {fallen.length === 0 ? null : charts(fallen)}
      {held.length === 0 ? null : (
        <details className="printed-fold">
          <summary>
            {t('treatments.heldPanels', { method: names.methodName(window.methodId), count: held.length })}
          </summary>
          {charts(held)}
        </details>
      )}
    </>
  );
}
