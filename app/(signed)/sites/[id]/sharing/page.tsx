import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getSharing } from '@/lib/records/sharing/get-sharing.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { Notice } from '@/lib/ui/page/notice';
import { sharingFields } from '@/lib/ui/sharing/sharing-fields';
import { SharingRead } from '@/lib/ui/sharing/sharing-read';
import { agreeSharingAction } from './actions';

export default async function SharingPage({ params, searchParams }: PageProps<'/sites/[id]/sharing'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator', 'member');
  const sharing = isId(id) ? await readAs(actor, (context) => getSharing(context, id)) : undefined;
  if (!sharing) return <NotThere />;
  if (!sharing.mayChange) return <SharingRead sharing={sharing} />;
  const t = await getTranslations('sharing');
  const saved = (await searchParams).saved === '1';
  const { site, agreementId, revision, withMembers, withFunder } = sharing;
  return (
    <RecordForm
      action={agreeSharingAction}
      heading={t('heading', { site: site.name })}
      fields={await sharingFields(site.name)}
      values={{ id: site.id, revision: String(revision), withMembers, withFunder }}
      submitLabel={t('submit')}
      words={await loadFormWords()}
      after={
        <>
          <Link href={`/sites/${site.id}` as Route}>{site.name}</Link>
          {agreementId === undefined ? null : (
            <Link href={`/history/${agreementId}` as Route}>{t('history')}</Link>
          )}
        </>
      }
    >
      {saved ? <Notice>{t('saved')}</Notice> : null}
      <p className="lead">{t('lead')}</p>
      {revision === 0 ? <p>{t('nothingSaid')}</p> : null}
      <p>{t('limits')}</p>
    </RecordForm>
  );
}
