import { getTranslations } from 'next-intl/server';
import { requireActor } from '@/lib/access/current';
import { readAs } from '@/lib/access/scoped-db';
import { isId } from '@/lib/records/fields/id-field';
import { getNotice } from '@/lib/records/lot-notice/get-notice.query';
import { loadFormWords } from '@/lib/ui/form/load-form-words';
import { RecordForm } from '@/lib/ui/form/record-form';
import { sentenceCase } from '@/lib/ui/format/sentence-case';
import { NoticeText } from '@/lib/ui/notices/notice-text';
import { NotThere } from '@/lib/ui/page/not-there';
import { withdrawNoticeAction } from '../../actions';

export default async function WithdrawNoticePage({ params }: PageProps<'/lot-notices/[id]/withdraw'>) {
  const { id } = await params;
  const actor = await requireActor('coordinator');
  const notice = isId(id) ? await readAs(actor, (context) => getNotice(context, id)) : undefined;
  if (!notice || notice.withdrawn !== null) return <NotThere />;
  const t = await getTranslations('notices');
  return (
    <RecordForm
      action={withdrawNoticeAction}
      heading={t('withdraw.heading', { code: notice.lotCode })}
      fields={[
        { kind: 'hidden', name: 'id' },
        { kind: 'hidden', name: 'revision' },
        { kind: 'paragraph', name: 'reason', label: sentenceCase(t('fields.reason')) },
      ]}
      values={{ id, revision: String(notice.revision) }}
      submitLabel={t('withdraw.submit')}
      words={await loadFormWords()}
      tone="bad"
    >
      <NoticeText notice={notice} language={actor.language} />
      <p>{t('withdraw.explain')}</p>
    </RecordForm>
  );
}
