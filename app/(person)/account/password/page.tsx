import { getTranslations } from 'next-intl/server';
import { requirePerson } from '@/lib/access/current';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { changePasswordAction } from './actions';

export default async function PasswordPage() {
  await requirePerson();
  const t = await getTranslations('access');
  return (
    <RecordForm
      action={changePasswordAction}
      heading={t('account.passwordHeading')}
      fields={[
        {
          kind: 'password',
          name: 'currentPassword',
          label: sentenceCase(t('fields.currentPassword')),
          autoComplete: 'current-password',
        },
        {
          kind: 'password',
          name: 'newPassword',
          label: sentenceCase(t('fields.newPassword')),
          hint: t('hints.password'),
          autoComplete: 'new-password',
        },
      ]}
      submitLabel={t('account.passwordSubmit')}
      words={await loadFormWords()}
    >
      <p>{t('account.passwordNote')}</p>
    </RecordForm>
  );
}
