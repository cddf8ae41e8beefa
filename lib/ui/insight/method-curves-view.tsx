import type { CurveStep, MethodCurve } from '@/lib/analysis/method-question/method-curves';
import type { MethodsAnswer } from '@/lib/analysis/method-question/methods-answer';
import { PlotChart } from '../chart/plot-chart';
import { formatInterval } from '../format/interval-text';
import { DataTable } from '../table/data-table';
import type { InsightWords } from './insight-words';

const week = 7;

/** Where a staircase stands on a day: its last step up to then. */
function at(curve: MethodCurve, day: number): CurveStep | undefined {
  return curve.steps.filter((step) => step.day <= day).at(-1);
}

/** Cumulative curves of contamination by method, and the same numbers by the week. */
export function MethodCurvesView({ answer, words }: { answer: MethodsAnswer; words: InsightWords }) {
  const { t, names, number, locale, language } = words;
  const curves = answer.curves
    .filter(({ steps }) => steps.length > 0)
    .sort((a, b) => names.methodName(a.method).localeCompare(names.methodName(b.method), language));
  if (curves.length === 0) return null;
  const days = answer.curveDays;
  const weeks = Array.from({ length: Math.floor(days / week) }, (_, index) => (index + 1) * week);
  const lastDay = (curve: MethodCurve) => curve.steps.at(-1)?.day ?? 0;
  return (
    <>
      <h2>{t('methods.curvesHeading')}</h2>
      <PlotChart
        title={t('methods.curves')}
        reading={t('methods.curvesReading')}
        unit="%"
        along={t('methods.curvesAlong')}
        from={0}
        to={days}
        alongTicks={[0, 0.25, 0.5, 0.75, 1].map((part) => ({
          at: Math.round(part * days),
          text: number(Math.round(part * days)),
        }))}
        lines={curves.map((curve, series) => ({
          key: curve.method,
          kind: 'course' as const,
          stairs: true,
          series,
          points: [{ x: 0, y: 0 }, ...curve.steps.map(({ day, percent }) => ({ x: day, y: percent }))],
        }))}
        marks={curves.flatMap((curve, series) => {
          const end = curve.steps.at(-1);
          return end === undefined ? [] : [{ key: curve.method, series, x: end.day, y: end.percent }];
        })}
        legend={curves.map((curve, series) => ({
          key: curve.method,
          label: names.methodName(curve.method),
          series,
        }))}
        note={t('methods.curvesNote', { fewest: number(answer.fewestWatched) })}
      />
      <DataTable
        caption={t('methods.curvesTable')}
        rows={weeks}
        rowKey={(day) => String(day)}
        columns={[
          { key: 'day', header: t('methods.day'), cell: (day) => number(day) },
          ...curves.map((curve) => ({
            key: curve.method,
            header: names.methodName(curve.method),
            unit: '%',
            numeric: true,
            cell: (day: number) => {
              const step = day - week >= lastDay(curve) ? undefined : at(curve, day);
              if (step === undefined) return '–';
              const limits =
                step.low === null || step.high === null
                  ? ''
                  : ` (${formatInterval(step.low, step.high, locale)})`;
              return `${number(step.percent, 1)}${limits}`;
            },
          })),
        ]}
      />
    </>
  );
}
