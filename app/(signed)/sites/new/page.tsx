import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { siteFields } from '@/lib/ui/sites/site-fields';
import { addSiteAction } from '../actions';

export default async function NewSitePage() {
  const actor = await requireActor('coordinator');
  const t = await getTranslations('sites');
  return (
    <RecordForm
      action={addSiteAction}
      heading={t('add')}
      fields={await siteFields('add')}
      values={{ timeZone: actor.networkTimeZone, trimDefault: 'as_picked' }}
      submitLabel={t('submitAdd')}
      words={await loadFormWords()}
    />
  );
}
