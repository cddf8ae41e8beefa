import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { listSites } from '@/lib/records/site/list-sites.query';
import { loadFormWordsShownOnce } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { ButtonLink } from '@/lib/ui/page/button-link';
import { EmptyState } from '@/lib/ui/page/empty-state';
import { inviteFields } from '@/lib/ui/people/invite-fields';
import { invitePersonAction } from './actions';

export default async function InvitePage() {
  const actor = await requireActor('coordinator');
  const sites = await readAs(actor, listSites);
  const t = await getTranslations('people');
  return (
    <RecordForm
      action={invitePersonAction}
      heading={t('invite')}
      fields={await inviteFields(sites)}
      values={{ role: 'member' }}
      submitLabel={t('makeLink')}
      words={await loadFormWordsShownOnce()}
    >
      <p>{t('inviteIntro')}</p>
      {sites.length > 0 ? null : (
        <EmptyState text={t('noSites')}>
          <ButtonLink href="/sites/new">{t('addSite')}</ButtonLink>
        </EmptyState>
      )}
    </RecordForm>
  );
}
