import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { BatchView } from '@/lib/records/batch/batch-view';
import { ButtonLink } from '../page/button-link';

/** What comes after a batch was saved: its labels, and the next one just like it. */
export async function StartedNext({ batch }: { batch: Pick<BatchView, 'id' | 'secondLife'> }) {
  const t = await getTranslations('batches');
  return (
    <p className="chips no-print">
      <ButtonLink href={`/labels?batch=${batch.id}` as Route} plain>
        {t('do.labels')}
      </ButtonLink>
      {batch.secondLife ? null : (
        <ButtonLink href={`/batches/new?repeat=${batch.id}` as Route} plain>
          {t('repeat.this')}
        </ButtonLink>
      )}
    </p>
  );
}
