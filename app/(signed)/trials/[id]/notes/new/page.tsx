import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { newId } from '@/lib/base/new-id';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { noteTrialAction } from '../../../actions';
import { loadTrial } from '../../load-trial';

export default async function NewNotePage({ params }: PageProps<'/trials/[id]/notes/new'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const trial = await loadTrial(actor, id);
  if (!trial || trial.state === 'draft') return <NotThere />;
  const t = await getTranslations('trials');
  return (
    <RecordForm
      action={noteTrialAction}
      heading={t('note.heading', { title: trial.title })}
      fields={[
        { kind: 'paragraph', name: 'note', label: sentenceCase(t('fields.note')) },
        { kind: 'hidden', name: 'trialId' },
        { kind: 'hidden', name: 'id' },
      ]}
      values={{ trialId: id, id: newId() }}
      submitLabel={t('note.submit')}
      words={await loadFormWords()}
      after={<Link href={`/trials/${id}` as Route}>{trial.title}</Link>}
    >
      <p>{t('note.intro')}</p>
    </RecordForm>
  );
}
