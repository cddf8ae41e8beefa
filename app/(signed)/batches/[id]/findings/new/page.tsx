import { getTranslations } from 'next-intl/server';
import { newId } from '@/lib/base/new-id';
import { entryFields } from '@/lib/ui/batches/entry-fields';
import { stageOf } from '@/lib/ui/batches/stage-of';
import { addressValues } from '@/lib/ui/form/address-values';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { recordFindingAction } from '../../entry-actions';
import { readBatch } from '../../read-batch';

export default async function NewFindingPage({
  params,
  searchParams,
}: PageProps<'/batches/[id]/findings/new'>) {
  const read = await readBatch(params);
  if (!read) return <NotThere />;
  const { actor, page } = read;
  const { batch, today } = page;
  const t = await getTranslations('findings');
  const days = await recentDays(today);
  const fields = await entryFields({
    kind: 'finding',
    days,
    language: actor.language,
    container: batch.containerKind,
  });
  return (
    <RecordForm
      action={recordFindingAction}
      heading={t('finding.heading', { code: batch.code })}
      fields={[...fields, { kind: 'hidden', name: 'id' }, { kind: 'hidden', name: 'batchId' }]}
      values={{
        units: batch.unitCount === 1 ? '1' : '',
        stage: stageOf(page.story),
        foundOn__quick: today,
        ...addressValues(fields, await searchParams),
        id: newId(),
        batchId: batch.id,
      }}
      submitLabel={t('finding.submit')}
      words={await loadFormWords()}
    >
      {batch.containerKind === 'bed' ? null : (
        <p>{t('finding.intro', { available: page.figures.units.canBeFound })}</p>
      )}
    </RecordForm>
  );
}
