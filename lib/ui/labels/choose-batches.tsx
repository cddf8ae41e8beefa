import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { ListedBatch } from '@/lib/records/batch/list-batches.query';
import { Field } from '../form/fields/field';
import { loadFormWords } from '../form/load-form-words';
import { formatDate } from '../format/date-text';

type Props = { readonly batches: readonly ListedBatch[]; readonly language: Language };

/** Which batches get labels, latest first. */
export async function ChooseBatches({ batches, language }: Props) {
  const t = await getTranslations('labels');
  const units = await getTranslations('vocabulary.containerCount');
  const locale = await getLocale();
  const context = { values: {}, errors: [], words: await loadFormWords() };
  return (
    <form action={'/labels' as Route} method="get" noValidate className="record-form">
      <div className="record-fields">
        <Field
          spec={{
            kind: 'several',
            name: 'batch',
            label: t('chooseBatches'),
            options: batches.map((batch) => ({
              value: batch.id,
              label: `${batch.code}, ${batch.species[language]}`,
              hint: `${units(batch.containerKind, { count: batch.unitCount })}, ${formatDate(batch.inoculatedOn, locale)}, ${batch.siteName}`,
            })),
          }}
          context={context}
        />
      </div>
      <div className="form-end">
        <button type="submit" className="button button-action">
          {t('next')}
        </button>
      </div>
    </form>
  );
}
