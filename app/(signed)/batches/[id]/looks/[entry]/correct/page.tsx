import { getTranslations } from 'next-intl/server';
import { entryFields } from '@/lib/ui/batches/entry-fields';
import { entryValues } from '@/lib/ui/batches/entry-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { correctionFields } from '@/lib/ui/history/correction-fields';
import { NotThere } from '@/lib/ui/page/not-there';
import { correctLookAction } from '../../../entry-actions';
import { readBatch } from '../../../read-batch';

export default async function CorrectLookPage({ params }: PageProps<'/batches/[id]/looks/[entry]/correct'>) {
  const read = await readBatch(params);
  const { entry: entryId } = await params;
  const entry = read?.page.story.find(({ id, voidReason }) => id === entryId && voidReason === null);
  if (!read || entry?.kind !== 'look') return <NotThere />;
  const t = await getTranslations('findings');
  const days = await recentDays(read.page.today);
  return (
    <RecordForm
      action={correctLookAction}
      heading={t('look.correct')}
      fields={[
        ...(await entryFields({
          kind: 'look',
          days,
          language: read.actor.language,
          container: read.page.batch.containerKind,
        })),
        ...(await correctionFields()),
      ]}
      values={entryValues(entry)}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
