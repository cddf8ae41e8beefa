import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getLeaving } from '@/lib/records/person/get-leaving.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { LeavingTold } from '@/lib/ui/leaving/leaving-told';
import { wordField } from '@/lib/ui/leaving/word-field';
import { NotThere } from '@/lib/ui/page/not-there';
import { erasePersonAction } from './actions';

export default async function ErasePersonPage({ params }: PageProps<'/people/[membershipId]/leave'>) {
  const { membershipId } = await params;
  const actor = await requireActor('coordinator');
  const leaving = isId(membershipId)
    ? await readAs(actor, (context) => getLeaving(context, membershipId))
    : undefined;
  if (!leaving || leaving.personId === actor.personId) return <NotThere />;
  const t = await getTranslations('leaving');
  return (
    <RecordForm
      action={erasePersonAction}
      heading={t('asked.heading', { name: leaving.name })}
      fields={[
        { kind: 'hidden', name: 'id' },
        { kind: 'text', name: 'reason', label: sentenceCase(t('fields.reason')), hint: t('hints.reason') },
        await wordField(),
      ]}
      values={{ id: membershipId }}
      submitLabel={t('asked.submit')}
      tone="bad"
      words={await loadFormWords()}
    >
      <LeavingTold
        leaving={leaving}
        archive={`/people/${membershipId}/leave/archive`}
        lead={t('asked.lead', { name: leaving.name })}
      />
    </RecordForm>
  );
}
