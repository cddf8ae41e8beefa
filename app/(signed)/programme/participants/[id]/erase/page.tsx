import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getParticipant } from '@/lib/records/participant/get-participant.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { eraseParticipantAction } from '../../actions';

export default async function EraseParticipantPage({
  params,
}: PageProps<'/programme/participants/[id]/erase'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const person = isId(id) ? await readAs(actor, (context) => getParticipant(context, id)) : undefined;
  if (!person || person.voided !== null || person.name === null) return <NotThere />;
  const t = await getTranslations('programme.participants');
  const common = await getTranslations('common');
  return (
    <RecordForm
      action={eraseParticipantAction}
      heading={t('eraseHeading', { name: person.name })}
      fields={[
        { kind: 'hidden', name: 'id' },
        { kind: 'hidden', name: 'revision' },
        { kind: 'text', name: 'reason', label: sentenceCase(t('fields.reason')) },
      ]}
      values={{ id, revision: String(person.revision) }}
      submitLabel={t('eraseSubmit')}
      words={await loadFormWords()}
      tone="bad"
      after={<Link href={`/programme/participants/${id}` as Route}>{common('cancel')}</Link>}
    >
      <p>{t('eraseExplain')}</p>
    </RecordForm>
  );
}
