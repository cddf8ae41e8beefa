import { getLocale, getTranslations } from 'next-intl/server';
import { speciesDefaults } from '@/lib/growing/species-defaults';
import { formatTemperature, type TemperatureUnit } from '../format/temperature-text';

export type UsualRange = { readonly from: number; readonly to: number; readonly text: string };

/** The temperature a species is usually run or fruited at (common practice); undefined for species we know nothing of. */
export async function usualRange(
  speciesCode: string,
  fruiting: boolean,
  unit: TemperatureUnit,
): Promise<UsualRange | undefined> {
  const species = speciesDefaults.find(({ code }) => code === speciesCode);
  if (!species) return undefined;
  const { from, to } = fruiting ? species.fruitingCelsius : species.colonisingCelsius;
  const t = await getTranslations('conditions.usual');
  const locale = await getLocale();
  const warmth = (celsius: number) => formatTemperature(celsius, unit, locale);
  return { from, to, text: t(fruiting ? 'fruiting' : 'colonising', { from: warmth(from), to: warmth(to) }) };
}
