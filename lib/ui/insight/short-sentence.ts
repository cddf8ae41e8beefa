import type { ShortMethod } from '@/lib/analysis/treatment-question/short-methods';
import type { TemperatureUnit } from '@/lib/database/generated/enums';
import { formatTemperature } from '../format/temperature-text';
import type { InsightWords } from './insight-words';

/** What a site's own runs say of a method that they mostly did not hold, and what to do about it first. */
export function shortSentence(short: ShortMethod, unit: TemperatureUnit, words: InsightWords): string {
  const { t, inSentence } = words;
  const { judged, outside, unknown, latestHeld, window } = short;
  const about = {
    count: judged,
    outside,
    method: inSentence(short.methodId),
    held: heldText(short, unit, words),
  };
  return [
    t(outside === judged ? 'short.none' : 'short.some', about),
    unknown === 0 ? '' : t('short.unknown', { count: unknown }),
    t(latestHeld ? 'short.mended' : `short.hold.${window.kind}`),
  ]
    .filter((text) => text !== '')
    .join(' ');
}

/** "44 of 60 minutes between 65.6 °C and 82.2 °C"; rounded down, so that what fell short never reads as enough. */
function heldText({ window, heldMinutes }: ShortMethod, unit: TemperatureUnit, words: InsightWords): string {
  const { t, locale } = words;
  const down = (value: number, digits: number) => Math.floor(value * 10 ** digits + 1e-6) / 10 ** digits;
  switch (window.kind) {
    case 'heat':
      return t('short.held.heat', {
        held: down(heldMinutes, 0),
        least: window.minMinutes,
        low: formatTemperature(window.lowCelsius, unit, locale),
        high: formatTemperature(window.highCelsius, unit, locale),
      });
    case 'lime':
      return t('short.held.lime', {
        held: down(heldMinutes / 60, 1),
        least: window.minMinutes / 60,
        ph: window.minPh,
      });
    case 'ferment':
      return t('short.held.ferment', { held: down(heldMinutes / 1440, 1), least: window.minDays });
  }
}
