import { getLocale, getTranslations } from 'next-intl/server';
import { addDays } from '@/lib/growing/calendar-date';
import { conditionMeasures } from '@/lib/growing/vocabulary';
import type { ConditionDay } from '@/lib/records/condition/condition-days';
import { CourseChart } from '../chart/course-chart';
import { formatDate, formatDayMonth } from '../format/date-text';
import { formatNumber } from '../format/number-text';
import type { TemperatureUnit } from '../format/temperature-text';
import { DataTable } from '../table/data-table';
import { measureText, measureUnit, shownValue } from './measure-text';

type Props = {
  readonly days: readonly ConditionDay[];
  readonly temperatureUnit: TemperatureUnit;
  /** What the species is usually grown at, in Celsius, with its name in words. */
  readonly usual?: { readonly from: number; readonly to: number; readonly text: string };
};

const dayMinutes = 1440;
// Charts of days: a day is drawn as UTC, whatever the site's zone, since only the date counts.
const start = (date: string) => new Date(`${date}T00:00:00Z`);
const noon = (day: ConditionDay) => new Date(start(day.on).getTime() + day.days * 0.5 * dayMinutes * 60_000);

/** The day that an instant of the drawing lies in; the end of the last day is still that day. */
const dayOf = (at: Date, first: string) => {
  const day = new Date(at.getTime() - 1).toISOString().slice(0, 10);
  return day < first ? first : day;
};

/** One chart for each measure that was read, the days' range as a bar and their mean as a line, and the same in a table. */
export async function ConditionCharts({ days, temperatureUnit, usual }: Props) {
  const t = await getTranslations('conditions');
  const words = await getTranslations('vocabulary.conditionMeasure');
  const locale = await getLocale();
  const read = conditionMeasures.filter((measure) => days.some((day) => day.measure === measure));
  if (read.length === 0) return <p>{t('noReadings')}</p>;
  return (
    <>
      {read.map((measure) => {
        const own = days.filter((day) => day.measure === measure);
        const shown = (value: number) => shownValue(measure, value, temperatureUnit);
        const text = (value: number) => measureText(measure, value, temperatureUnit, locale);
        const least = Math.min(...own.map(({ low }) => low));
        const most = Math.max(...own.map(({ high }) => high));
        const count = own.reduce((sum, { readings }) => sum + readings, 0);
        const band = measure === 'temperature' ? usual : undefined;
        const said = t('reading', { low: text(least), high: text(most), count });
        return (
          <CourseChart
            key={measure}
            title={words(measure)}
            reading={band === undefined ? said : `${said} ${band.text}`}
            unit={measureUnit(measure, temperatureUnit)}
            points={own.map((day) => ({ at: noon(day), value: shown(day.mean) }))}
            spans={own.map((day) => ({
              from: start(day.on),
              to: start(addDays(day.on, day.days)),
              low: shown(day.low),
              high: shown(day.high),
            }))}
            {...(band === undefined ? {} : { limits: { low: shown(band.from), high: shown(band.to) } })}
            maxGapMinutes={(own[0]?.days ?? 1) * dayMinutes * 2}
            timeText={(at) => formatDayMonth(dayOf(at, own[0]?.on ?? ''), locale)}
            marks={own.length === 1}
          />
        );
      })}
      <details>
        <summary>{t('asTable')}</summary>
        <DataTable
          caption={t('tableCaption')}
          rows={days}
          rowKey={(day) => `${day.measure} ${day.on}`}
          columns={[
            {
              key: 'on',
              header: t('columns.on'),
              cell: (day) =>
                day.days === 1
                  ? formatDate(day.on, locale)
                  : `${formatDate(day.on, locale)} – ${formatDate(addDays(day.on, day.days - 1), locale)}`,
            },
            { key: 'measure', header: t('columns.measure'), cell: (day) => words(day.measure) },
            ...(['low', 'mean', 'high'] as const).map((key) => ({
              key,
              header: t(`columns.${key}`),
              numeric: true,
              cell: (day: ConditionDay) => measureText(day.measure, day[key], temperatureUnit, locale),
            })),
            {
              key: 'readings',
              header: t('columns.readings'),
              numeric: true,
              cell: (day) => formatNumber(day.readings, locale, 0),
            },
          ]}
        />
      </details>
    </>
  );
}
