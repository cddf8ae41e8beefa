import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { isId } from '@/lib/records/fields/id-field';
import { listNoticeSites } from '@/lib/records/lot-notice/list-notice-sites.query';
import { noticedKinds } from '@/lib/records/lot-notice/lot-notice.input';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { noticeFields } from '@/lib/ui/notices/notice-fields';
import { noticedLotPath } from '@/lib/ui/notices/noticed-lot-path';
import { Link } from '@/lib/ui/page/link';
import { NotThere } from '@/lib/ui/page/not-there';
import { writeNoticeAction } from '../../../actions';

export default async function NewNoticePage({
  params,
  searchParams,
}: PageProps<'/lot-notices/new/[kind]/[id]'>) {
  const { kind, id } = await params;
  const { called } = await searchParams;
  const actor = await requireActor('coordinator');
  const lotKind = noticedKinds.find((one) => one === kind);
  const choices =
    lotKind === undefined || !isId(id)
      ? undefined
      : await readAs(actor, (context) => listNoticeSites(context, lotKind, id));
  if (lotKind === undefined || !choices) return <NotThere />;
  const t = await getTranslations('notices');
  const concerned = choices.sites.filter(({ batches, received }) => batches > 0 || received);
  return (
    <RecordForm
      action={writeNoticeAction}
      heading={t('new.heading', { code: choices.lotCode })}
      fields={await noticeFields(choices)}
      values={{
        ...{ id: newId(), lotKind, lotId: id },
        siteIds: concerned.map((site) => site.id),
        ...(called === 'out' ? { whatHappened: t('new.proposed'), whatToDo: t('new.proposedToDo') } : {}),
      }}
      submitLabel={t('new.submit')}
      words={await loadFormWords()}
      after={
        <Link href={noticedLotPath({ lotKind, lotId: id })}>
          {t('about', { what: choices.what?.[actor.language] ?? '', code: choices.lotCode })}
        </Link>
      }
    >
      <p>{t('new.intro')}</p>
      {choices.left.length > 0 ? <p>{t('new.left', { sites: choices.left.join(', ') })}</p> : null}
    </RecordForm>
  );
}
