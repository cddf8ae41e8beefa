import { getLocale, getTranslations } from 'next-intl/server';
import type { MoistureSource } from '@/lib/database/generated/enums';

type Moisture = { readonly moisturePercent: number | null; readonly moistureSource: MoistureSource };

/** Moisture with its ground: "12 % (measured)", "12 % (assumed)" or that none is known. */
export async function lotMoisture(): Promise<(lot: Moisture) => string> {
  const words = await getTranslations('vocabulary.moistureSource');
  const locale = await getLocale();
  return ({ moisturePercent, moistureSource }) =>
    moisturePercent === null
      ? words(moistureSource)
      : `${new Intl.NumberFormat(locale, { maximumFractionDigits: 1 }).format(moisturePercent)}\u00a0% (${words(moistureSource).toLocaleLowerCase()})`;
}
