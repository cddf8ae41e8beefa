import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { NoticeView } from '@/lib/records/lot-notice/notice-view';
import { Link } from '../page/link';
import { noticedLotPath } from './noticed-lot-path';

type Props = { readonly notice: NoticeView; readonly language: Language; readonly naming?: boolean };

/** What a notice says: about which lot, what happened, what to do. */
export async function NoticeText({ notice, language, naming = true }: Props) {
  const t = await getTranslations('notices');
  return (
    <>
      {naming ? (
        <p>
          <Link href={noticedLotPath(notice)}>
            {t('about', { what: notice.what[language], code: notice.lotCode })}
          </Link>
        </p>
      ) : null}
      <p className="whitespace-pre-line">{notice.whatHappened}</p>
      <p className="whitespace-pre-line">{t('toDo', { text: notice.whatToDo })}</p>
    </>
  );
}
