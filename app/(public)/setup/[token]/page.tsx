import { getTranslations } from 'next-intl/server';
import { setupLinkIsOpen } from '@/lib/access/setup-link';
import { setupFields } from '@/lib/ui/access/setup-fields';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Heading } from '@/lib/ui/page/heading';
import { startNetworkAction } from './actions';

export default async function SetupPage({ params }: PageProps<'/setup/[token]'>) {
  const { token } = await params;
  const t = await getTranslations('access');
  if (!(await setupLinkIsOpen(token))) {
    return (
      <>
        <Heading text={t('join.gone')} />
        <p>{t('join.goneText')}</p>
      </>
    );
  }
  return (
    <RecordForm
      action={startNetworkAction.bind(null, token)}
      heading={t('setup.heading')}
      fields={await setupFields()}
      submitLabel={t('setup.submit')}
      words={await loadFormWords()}
    >
      <p>{t('setup.intro')}</p>
    </RecordForm>
  );
}
