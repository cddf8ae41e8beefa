import { getTranslations } from 'next-intl/server';
import { newId } from '@/lib/base/new-id';
import { entryFields } from '@/lib/ui/batches/entry-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { recordLookAction } from '../../entry-actions';
import { readBatch } from '../../read-batch';

export default async function NewLookPage({ params }: PageProps<'/batches/[id]/looks/new'>) {
  const read = await readBatch(params);
  if (!read) return <NotThere />;
  const { actor, page } = read;
  const { batch, today } = page;
  const t = await getTranslations('findings');
  const days = await recentDays(today);
  return (
    <RecordForm
      action={recordLookAction}
      heading={t('look.heading', { code: batch.code })}
      fields={[
        ...(await entryFields({
          kind: 'look',
          days,
          language: actor.language,
          container: batch.containerKind,
        })),
        { kind: 'hidden', name: 'id' },
        { kind: 'hidden', name: 'batchId' },
      ]}
      values={{ id: newId(), batchId: batch.id, lookedOn__quick: today }}
      submitLabel={t('look.submit')}
      words={await loadFormWords()}
    >
      <p>{t('look.intro')}</p>
    </RecordForm>
  );
}
