import { getLocale, getTranslations } from 'next-intl/server';
import { fallsBelow } from '@/lib/growing/falls-below';
import type { TreatmentView } from '@/lib/records/treatment/get-treatment.query';
import { formatDuration } from '../format/duration-text';
import { formatTime } from '../format/instant-text';
import { formatTemperature, type TemperatureUnit } from '../format/temperature-text';

type Props = { readonly run: TreatmentView; readonly temperatureUnit: TemperatureUnit };

/** Says plainly when a load fell below its window after it had reached it, and what that does to the count. */
export async function FallsNote({ run, temperatureUnit }: Props) {
  const { window } = run;
  if (window?.kind !== 'heat') return null;
  const readings = run.readings.flatMap(({ at, place, celsius }) =>
    celsius === null ? [] : [{ at, place, celsius }],
  );
  const falls = fallsBelow(readings, window);
  if (falls.length === 0) return null;
  const t = await getTranslations('treatments.falls');
  const locale = await getLocale();
  const warmth = (celsius: number) => formatTemperature(celsius, temperatureUnit, locale);
  return (
    <ul>
      {falls.map((fall) => (
        <li key={fall.from.getTime()}>
          {t(fall.breaksHold ? 'breaks' : 'short', {
            at: formatTime(fall.from, run.site.timeZone, locale),
            limit: warmth(window.lowCelsius),
            length: formatDuration(Math.max(1, fall.minutes), locale),
            lowest: warmth(fall.lowestCelsius),
          })}
        </li>
      ))}
    </ul>
  );
}
