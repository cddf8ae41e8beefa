import { getTranslations } from 'next-intl/server';
import { currentSigned } from '@/lib/access/current';
import { lookUpInvitation } from '@/lib/access/join';
import { joinFields } from '@/lib/ui/access/join-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Heading } from '@/lib/ui/page/heading';
import { joinAction } from './actions';

export default async function JoinPage({ params }: PageProps<'/join/[token]'>) {
  const { token } = await params;
  const t = await getTranslations('access');
  const invitation = await lookUpInvitation(token);
  if (!invitation) {
    return (
      <>
        <Heading text={t('join.gone')} />
        <p>{t('join.goneText')}</p>
      </>
    );
  }
  const signed = await currentSigned();
  const role = t(`role.${invitation.role}`);
  return (
    <RecordForm
      action={joinAction.bind(null, token)}
      heading={t('join.heading', { network: invitation.networkName })}
      fields={signed ? [] : await joinFields()}
      values={{ name: invitation.forName ?? '' }}
      submitLabel={signed ? t('join.asYou', { name: signed.person.name }) : t('join.submit')}
      words={await loadFormWords()}
    >
      <p>{t('join.intro', { role })}</p>
    </RecordForm>
  );
}
