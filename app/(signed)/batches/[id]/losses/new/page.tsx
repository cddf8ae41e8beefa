import { getTranslations } from 'next-intl/server';
import { newId } from '@/lib/base/new-id';
import { entryFields } from '@/lib/ui/batches/entry-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { recordLossAction } from '../../entry-actions';
import { readBatch } from '../../read-batch';

export default async function NewLossPage({ params }: PageProps<'/batches/[id]/losses/new'>) {
  const read = await readBatch(params);
  if (!read) return <NotThere />;
  const { actor, page } = read;
  const { batch, today } = page;
  const t = await getTranslations('findings');
  const days = await recentDays(today);
  return (
    <RecordForm
      action={recordLossAction}
      heading={t('loss.heading', { code: batch.code })}
      fields={[
        ...(await entryFields({
          kind: 'loss',
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
        units: batch.unitCount === 1 ? '1' : '',
        lostOn__quick: today,
      }}
      submitLabel={t('loss.submit')}
      words={await loadFormWords()}
    >
      <p>{t('loss.intro', { live: page.figures.units.live })}</p>
    </RecordForm>
  );
}
