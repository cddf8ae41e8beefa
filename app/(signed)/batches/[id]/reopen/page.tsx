import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { getBatchStanding } from '@/lib/records/batch/get-batch-standing.query';
import { isId } from '@/lib/records/fields/id-field';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { correctionFields } from '@/lib/ui/history/correction-fields';
import { NotThere } from '@/lib/ui/page/not-there';
import { reopenBatchAction } from '../close/actions';

export default async function ReopenBatchPage({ params }: PageProps<'/batches/[id]/reopen'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const batch = isId(id)
    ? await readAs(actor, (context) => getBatchStanding(context, id, new Date()))
    : undefined;
  if (!batch?.closed) return <NotThere />;
  const t = await getTranslations('batches');
  return (
    <RecordForm
      action={reopenBatchAction}
      heading={t('reopen', { code: batch.code })}
      fields={await correctionFields()}
      values={{ id, revision: String(batch.revision) }}
      submitLabel={t('submitReopen')}
      words={await loadFormWords()}
    />
  );
}
