import { getLocale, getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import type { SpawnLeft } from '../sums/sum-input';
import type { StartOptions } from './start-options';

/** The lists of the batch form with what the site has left of each spawn lot beside it. */
export async function withLeft(
  options: StartOptions,
  left: readonly SpawnLeft[],
  siteId: string,
  massUnit: MassUnit,
): Promise<StartOptions> {
  const t = await getTranslations('batches');
  const locale = await getLocale();
  return {
    ...options,
    spawn: options.spawn.map((option) => {
      const here = left.find((one) => one.lotId === option.value && one.siteId === siteId);
      if (here === undefined) return option;
      return {
        ...option,
        hint: t('leftHint', { mass: formatMass(Math.max(0, here.grams), massUnit, locale) }),
      };
    }),
  };
}
