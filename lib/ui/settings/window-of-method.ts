import { getLocale, getTranslations } from 'next-intl/server';
import type { SettingsView } from '@/lib/records/settings/list-settings.query';
import { formatTemperature, type TemperatureUnit } from '../format/temperature-text';

type Method = SettingsView['methods'][number];

/** The window of a method as the network has set it, in one line. */
export async function windowOfMethod(unit: TemperatureUnit): Promise<(method: Method) => string> {
  const t = await getTranslations('settings');
  const locale = await getLocale();
  const hours = (minutes: number) =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(minutes / 60);
  return (method) => {
    const parts: string[] = [];
    if (method.minCelsius !== null) {
      const low = formatTemperature(method.minCelsius, unit, locale);
      parts.push(
        method.maxCelsius === null
          ? `≥ ${low}`
          : `${low} – ${formatTemperature(method.maxCelsius, unit, locale)}`,
      );
    }
    if (method.minPh !== null) parts.push(`pH ≥ ${method.minPh}`);
    if (method.minMinutes !== null) {
      parts.push(
        method.maxMinutes === null
          ? t('hoursLeast', { least: hours(method.minMinutes) })
          : t('hours', { least: hours(method.minMinutes), most: hours(method.maxMinutes) }),
      );
    }
    return parts.length === 0 ? t('noWindow') : parts.join(', ');
  };
}
