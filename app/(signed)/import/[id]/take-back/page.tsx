import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { canBeTakenBack } from '@/lib/intake/table/take-back';
import { viewFile } from '@/lib/intake/table/view-file';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { takeBackAction } from './actions';

export default async function TakeBackPage({ params }: PageProps<'/import/[id]/take-back'>) {
  const actor = await requireActor('coordinator', 'member');
  const { id } = await params;
  const file = await readAs(actor, (context) => viewFile(context, id, new Date()));
  if (!file || file.counts.added === 0 || !canBeTakenBack(file)) return <NotThere />;
  const t = await getTranslations('import.takeBack');
  const common = await getTranslations('common');
  return (
    <RecordForm
      action={takeBackAction}
      heading={t('heading', { file: file.fileName })}
      fields={[
        { kind: 'hidden', name: 'id' },
        { kind: 'text', name: 'reason', label: common('voiding.reason'), hint: common('voiding.reasonHint') },
      ]}
      values={{ id }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
      tone="bad"
      after={<Link href={`/import/${id}` as Route}>{common('cancel')}</Link>}
    >
      <p>{t('explain', { rows: file.counts.added })}</p>
    </RecordForm>
  );
}
