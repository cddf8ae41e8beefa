import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { getBatchStanding } from '@/lib/records/batch/get-batch-standing.query';
import { isId } from '@/lib/records/fields/id-field';
import { closeFields } from '@/lib/ui/batches/close-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { recentDays } from '@/lib/ui/form/recent-days';
import { RecordForm } from '@/lib/ui/form/record-form';
import { NotThere } from '@/lib/ui/page/not-there';
import { closeBatchAction } from './actions';

export default async function CloseBatchPage({ params }: PageProps<'/batches/[id]/close'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const batch = isId(id)
    ? await readAs(actor, (context) => getBatchStanding(context, id, new Date()))
    : undefined;
  if (!batch || batch.closed) return <NotThere />;
  const t = await getTranslations('batches');
  return (
    <RecordForm
      action={closeBatchAction}
      heading={t('close', { code: batch.code })}
      fields={await closeFields(await recentDays(batch.today, batch.leftOn), batch.weighed)}
      values={{
        batchId: id,
        closedOn__quick: batch.leftOn ?? batch.today,
        ...(batch.live === 0 && batch.moved > 0
          ? { closeReason: 'moved_on', spentDestination: 'second_life' }
          : { closeReason: 'finished', spentDestination: 'composted' }),
      }}
      submitLabel={t('submitClose')}
      words={await loadFormWords()}
    >
      <p>{t('closeIntro')}</p>
    </RecordForm>
  );
}
