import { getLocale, getTranslations } from 'next-intl/server';
import type { UsualRuns } from '@/lib/analysis/trials/read-usual-runs';
import type { Language } from '@/lib/database/generated/enums';
import { formatNumber } from '../format/number-text';

/** What the network's own records say about how runs go, for whoever has to write down what to expect. */
export async function UsualRunsNote({ usual, language }: { usual: UsualRuns; language: Language }) {
  const t = await getTranslations('trials.known');
  const words = await getTranslations('vocabulary');
  const locale = await getLocale();
  const { lostPercent, likeness, bePercent, runSpreadPoints, container } = usual;
  if (lostPercent === null || likeness === null) return null;
  return (
    <p>
      {t('contamination', {
        species: usual.species[language],
        container: words(`containerKind.${container}`).toLowerCase(),
        percent: formatNumber(lostPercent, locale, 1),
        likeness: formatNumber(likeness, locale, 2),
      })}{' '}
      {bePercent === null || runSpreadPoints === null || container === 'bed' || container === 'log'
        ? null
        : t('yield', {
            percent: formatNumber(bePercent, locale, 0),
            spread: formatNumber(runSpreadPoints, locale, 0),
          })}
    </p>
  );
}
