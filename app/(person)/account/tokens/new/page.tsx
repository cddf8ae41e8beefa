import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSites } from '@/lib/records/site/list-sites.query';
import { tokenFields } from '@/lib/ui/api/token-fields';
import { loadFormWordsShownOnce } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { makeTokenAction } from '../actions';

export default async function NewTokenPage() {
  const actor = await requireActor('coordinator', 'member');
  const sites = await readAs(actor, listSites);
  const t = await getTranslations('api');
  return (
    <RecordForm
      action={makeTokenAction}
      heading={t('make.heading')}
      fields={await tokenFields(sites)}
      values={{ scope: 'read' }}
      submitLabel={t('make.submit')}
      words={await loadFormWordsShownOnce()}
      after={<Link href={'/account/tokens' as Route}>{t('tokens.back')}</Link>}
    >
      <p>{t('make.intro')}</p>
    </RecordForm>
  );
}
