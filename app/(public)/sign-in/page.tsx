import { getTranslations } from 'next-intl/server';
import { nextPath } from '@/lib/access/next-path';
import { signInFields } from '@/lib/ui/access/sign-in-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { signInAction } from './actions';

export default async function SignInPage({ searchParams }: PageProps<'/sign-in'>) {
  const next = nextPath((await searchParams).next) ?? '';
  const t = await getTranslations('access.signIn');
  return (
    <RecordForm
      action={signInAction}
      heading={t('heading')}
      fields={await signInFields()}
      values={{ next }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
      after={<p className="quiet">{t('help')}</p>}
    >
      <p>{t('intro')}</p>
    </RecordForm>
  );
}
