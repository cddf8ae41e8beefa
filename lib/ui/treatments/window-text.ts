import { getLocale, getTranslations } from 'next-intl/server';
import type { TemperatureUnit } from '@/lib/database/generated/enums';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import { formatTemperature } from '../format/temperature-text';

/** A method's window in words, or null where there is nothing to check. */
export async function windowText(
  window: TreatmentWindow | null,
  unit: TemperatureUnit,
): Promise<string | null> {
  if (window === null) return null;
  const t = await getTranslations('treatments.window');
  const locale = await getLocale();
  const hours = (minutes: number) =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(minutes / 60);
  switch (window.kind) {
    case 'heat': {
      const low = formatTemperature(window.lowCelsius, unit, locale);
      const high = formatTemperature(window.highCelsius, unit, locale);
      return window.maxMinutes === null
        ? t('heatOpen', { low, least: hours(window.minMinutes) })
        : t('heat', { low, high, least: hours(window.minMinutes), most: hours(window.maxMinutes) });
    }
    case 'lime':
      return t('lime', { ph: window.minPh, least: hours(window.minMinutes), most: hours(window.maxMinutes) });
    case 'ferment':
      return t('ferment', { least: window.minDays, most: window.maxDays });
  }
}
