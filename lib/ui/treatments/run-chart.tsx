import { getLocale, getTranslations } from 'next-intl/server';
import { dateInZone } from '@/lib/growing/calendar-date';
import { celsiusToFahrenheit } from '@/lib/growing/temperature-units';
import type { TreatmentView } from '@/lib/records/treatment/get-treatment.query';
import { CourseChart } from '../chart/course-chart';
import { formatDayMonth } from '../format/date-text';
import { formatTime } from '../format/instant-text';
import { formatNumber } from '../format/number-text';
import type { TemperatureUnit } from '../format/temperature-text';

type Props = {
  readonly run: TreatmentView;
  readonly temperatureUnit: TemperatureUnit;
};

const dayMinutes = 1440;

/** The readings of a run against its window: pH of a lime soak, temperature of anything else. */
export async function RunChart({ run, temperatureUnit }: Props) {
  const t = await getTranslations('treatments.chart');
  const locale = await getLocale();
  const { window, readings } = run;
  const { timeZone } = run.site;
  const days = new Set(readings.map(({ at }) => dateInZone(at, timeZone))).size;
  const timeText = (at: Date) =>
    days > 2 ? formatDayMonth(dateInZone(at, timeZone), locale) : formatTime(at, timeZone, locale);
  if (window?.kind === 'lime') {
    const points = readings.flatMap(({ at, ph }) => (ph === null ? [] : [{ at, value: ph }]));
    const last = points.at(-1);
    if (points.length < 2 || last === undefined) return null;
    return (
      <CourseChart
        title={t('ph')}
        reading={t('readingPh', { low: window.minPh, last: last.value, at: timeText(last.at) })}
        unit=""
        points={points}
        limits={{ low: window.minPh, high: null }}
        maxGapMinutes={dayMinutes}
        timeText={timeText}
      />
    );
  }
  const unit = temperatureUnit === 'celsius' ? '°C' : '°F';
  const place = window?.kind === 'heat' ? window.place : undefined;
  const shown = (celsius: number) => (temperatureUnit === 'celsius' ? celsius : celsiusToFahrenheit(celsius));
  const points = readings
    .filter((one) => place === undefined || one.place === place)
    .flatMap(({ at, celsius }) => (celsius === null ? [] : [{ at, value: shown(celsius) }]));
  const last = points.at(-1);
  if (points.length < 2 || last === undefined) return null;
  const warmth = (value: number) => `${formatNumber(value, locale, 1)}\u00a0${unit}`;
  const said = { last: warmth(last.value), at: timeText(last.at) };
  return (
    <CourseChart
      title={t(place === undefined ? 'water' : 'load')}
      reading={
        window?.kind === 'heat'
          ? t('readingHeat', {
              ...said,
              low: warmth(shown(window.lowCelsius)),
              high: warmth(shown(window.highCelsius)),
            })
          : t('readingWater', said)
      }
      unit={unit}
      points={points}
      {...(window?.kind === 'heat'
        ? { limits: { low: shown(window.lowCelsius), high: shown(window.highCelsius) } }
        : {})}
      maxGapMinutes={window?.kind === 'heat' ? window.maxGapMinutes : 3 * dayMinutes}
      timeText={timeText}
    />
  );
}
