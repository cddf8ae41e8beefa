import { getTranslations } from 'next-intl/server';
import { newId } from '@/lib/base/new-id';
import { entryFields } from '@/lib/ui/batches/entry-fields';
import { stageOf } from '@/lib/ui/batches/stage-of';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { recordCheckAction } from '../../entry-actions';
import { readBatch } from '../../read-batch';

export default async function NewCheckPage({ params }: PageProps<'/batches/[id]/checks/new'>) {
  const read = await readBatch(params);
  if (!read) return <NotThere />;
  const { actor, page } = read;
  const { batch, today } = page;
  const t = await getTranslations('findings');
  const days = await recentDays(today);
  return (
    <RecordForm
      action={recordCheckAction}
      heading={t('check.heading', { code: batch.code })}
      fields={[
        ...(await entryFields({
          kind: 'check',
          days,
          language: actor.language,
          container: batch.containerKind,
        })),
        { kind: 'hidden', name: 'id' },
        { kind: 'hidden', name: 'batchId' },
      ]}
      values={{
        id: newId(),
        batchId: batch.id,
        kind: stageOf(page.story) === 'cropping' ? 'pins_seen' : '',
        checkedOn__quick: today,
      }}
      submitLabel={t('check.submit')}
      words={await loadFormWords()}
    ></RecordForm>
  );
}
