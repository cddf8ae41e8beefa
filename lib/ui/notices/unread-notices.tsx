import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { NoticeView } from '@/lib/records/lot-notice/notice-view';
import { MarkReadForm } from './mark-read-form';
import { NoticeText } from './notice-text';

type Props = {
  readonly notices: readonly NoticeView[];
  readonly language: Language;
  readonly markRead: (data: FormData) => Promise<void>;
};

/** On a member's first page: one line for each notice to the own sites, which opens to be read and marked read. */
export async function UnreadNotices({ notices, language, markRead }: Props) {
  if (notices.length === 0) return null;
  const t = await getTranslations('notices');
  return (
    <section aria-label={t('unread')}>
      {notices.map((notice) => (
        <details key={notice.id}>
          <summary>{t('line', { what: notice.what[language], code: notice.lotCode })}</summary>
          <NoticeText notice={notice} language={language} />
          <MarkReadForm notice={notice} back="/today?saved=notice" action={markRead} />
          <p className="quiet">{t('online')}</p>
        </details>
      ))}
    </section>
  );
}
