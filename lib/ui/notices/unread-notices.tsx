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

/** On a member's first page: what each notice to the own sites says and asks for, and the way to mark it read; an order to stop is never folded. */
export async function UnreadNotices({ notices, language, markRead }: Props) {
  if (notices.length === 0) return null;
  const t = await getTranslations('notices');
  return (
    <section>
      <h2>{t('unread')}</h2>
      {notices.map((notice) => (
        <article key={notice.id} className="notice notice-watch">
          <NoticeText notice={notice} language={language} />
          <MarkReadForm notice={notice} back="/today?saved=notice" action={markRead} />
          <p className="quiet">{t('online')}</p>
        </article>
      ))}
    </section>
  );
}
