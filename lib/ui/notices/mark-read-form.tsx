import { getTranslations } from 'next-intl/server';
import type { NoticeView } from '@/lib/records/lot-notice/notice-view';

type Props = {
  readonly notice: NoticeView;
  /** Where the reader comes back to. */
  readonly back: string;
  readonly action: (data: FormData) => Promise<void>;
};

/** One press that says that the notice was read. */
export async function MarkReadForm({ notice, back, action }: Props) {
  const t = await getTranslations('notices');
  return (
    <form action={action}>
      <input type="hidden" name="noticeId" value={notice.id} />
      <input type="hidden" name="back" value={back} />
      <button
        type="submit"
        className="button button-plain"
        aria-label={t('markReadOf', { code: notice.lotCode })}
      >
        {t('markRead')}
      </button>
    </form>
  );
}
