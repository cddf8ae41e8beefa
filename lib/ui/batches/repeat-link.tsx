import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { RepeatView } from '@/lib/records/batch/get-repeat.query';
import { formatDate } from '../format/date-text';
import { ButtonLink } from '../page/button-link';

/** One tap to start the last batch once more. */
export async function RepeatLink({ repeat, language }: { repeat: RepeatView; language: Language }) {
  const t = await getTranslations('batches.repeat');
  const words = await getTranslations('vocabulary.containerCount');
  const locale = await getLocale();
  const { batch } = repeat;
  return (
    <p>
      <ButtonLink href={`/batches/new?repeat=${batch.id}` as Route}>
        {t('last', { code: batch.code })}
      </ButtonLink>{' '}
      <span className="quiet">
        {t('lastHint', {
          units: words(batch.containerKind, { count: batch.unitCount }),
          species: batch.species[language],
          date: formatDate(batch.inoculatedOn, locale),
        })}
      </span>
    </p>
  );
}
