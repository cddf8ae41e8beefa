import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { LastStarted } from '@/lib/records/batch/find-last-started.query';
import { formatDate } from '../format/date-text';
import { ButtonLink } from '../page/button-link';

/** One tap to start the last batch once more. */
export async function RepeatLink({ batch, language }: { batch: LastStarted; language: Language }) {
  const t = await getTranslations('batches.repeat');
  const words = await getTranslations('vocabulary.containerCount');
  const locale = await getLocale();
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
