import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { endTrialAction } from '../../actions';
import { loadTrial } from '../load-trial';

export default async function EndTrialPage({ params }: PageProps<'/trials/[id]/end'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const trial = await loadTrial(actor, id);
  if (trial?.state !== 'running') return <NotThere />;
  const t = await getTranslations('trials');
  return (
    <RecordForm
      action={endTrialAction}
      heading={t('end.heading', { title: trial.title })}
      fields={[
        {
          kind: 'text',
          name: 'endNote',
          label: sentenceCase(t('fields.endNote')),
          hint: t('end.hint'),
          width: 'long',
        },
        { kind: 'hidden', name: 'id' },
      ]}
      values={{ id }}
      submitLabel={t('end.submit')}
      tone="bad"
      words={await loadFormWords()}
      after={<Link href={`/trials/${id}` as Route}>{trial.title}</Link>}
    >
      <p>{t('end.intro')}</p>
    </RecordForm>
  );
}
