import { getTranslations } from 'next-intl/server';
import { entryFields } from '@/lib/ui/batches/entry-fields';
import { followUpValues } from '@/lib/ui/batches/entry-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { correctionFields } from '@/lib/ui/history/correction-fields';
import { NotThere } from '@/lib/ui/page/not-there';
import { correctFollowUpAction } from '../../../entry-actions';
import { readBatch } from '../../../read-batch';

export default async function CorrectFollowUpPage({
  params,
}: PageProps<'/batches/[id]/follow-ups/[entry]/correct'>) {
  const read = await readBatch(params);
  const { entry: entryId } = await params;
  const followUp = read?.page.story
    .flatMap((entry) => (entry.kind === 'finding' ? entry.followUps : []))
    .find(({ id, voidReason }) => id === entryId && voidReason === null);
  if (!read || !followUp) return <NotThere />;
  const t = await getTranslations('findings');
  const days = await recentDays(read.page.today);
  return (
    <RecordForm
      action={correctFollowUpAction}
      heading={t('followUp.correct')}
      fields={[
        ...(await entryFields({
          kind: 'follow-up',
          days,
          language: read.actor.language,
          container: read.page.batch.containerKind,
        })),
        ...(await correctionFields()),
      ]}
      values={followUpValues(followUp)}
      submitLabel={t('submitCorrect')}
      words={await loadFormWords()}
    />
  );
}
