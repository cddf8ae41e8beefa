import { getLocale, getTranslations } from 'next-intl/server';
import { newId } from '@/lib/base/new-id';
import { entryFields } from '@/lib/ui/batches/entry-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { formatDate } from '@/lib/ui/format/date-text';
import { NotThere } from '@/lib/ui/page/not-there';
import { recordFollowUpAction } from '../../../entry-actions';
import { readBatch } from '../../../read-batch';

export default async function FollowUpPage({
  params,
}: PageProps<'/batches/[id]/findings/[entry]/follow-up'>) {
  const read = await readBatch(params);
  const { entry: entryId } = await params;
  const finding = read?.page.story.find(({ id, voidReason }) => id === entryId && voidReason === null);
  if (!read || finding?.kind !== 'finding') return <NotThere />;
  const { actor, page } = read;
  const t = await getTranslations('findings');
  const date = formatDate(finding.on, await getLocale());
  const days = await recentDays(page.today);
  return (
    <RecordForm
      action={recordFollowUpAction}
      heading={t('followUp.heading', { code: page.batch.code })}
      fields={[
        ...(await entryFields({
          kind: 'follow-up',
          days,
          language: actor.language,
          container: page.batch.containerKind,
        })),
        { kind: 'hidden', name: 'id' },
        { kind: 'hidden', name: 'findingId' },
      ]}
      values={{
        id: newId(),
        findingId: finding.id,
        units: String(finding.units),
        doneOn__quick: page.today,
      }}
      submitLabel={t('followUp.submit')}
      words={await loadFormWords()}
    >
      <p>{t('followUp.intro', { units: finding.units, date })}</p>
    </RecordForm>
  );
}
