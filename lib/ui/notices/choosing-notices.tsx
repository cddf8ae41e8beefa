import { getTranslations } from 'next-intl/server';
import type { Language } from '@/lib/database/generated/enums';
import type { NoticeView } from '@/lib/records/lot-notice/notice-view';
import { NoticeText } from './notice-text';

type Props = { readonly notices: readonly NoticeView[]; readonly language: Language };

/** Above a form that chooses lots: a line that opens to the notices about those that can be chosen. */
export async function ChoosingNotices({ notices, language }: Props) {
  if (notices.length === 0) return null;
  const t = await getTranslations('notices');
  const codes = notices.map(({ lotCode }) => lotCode).join(', ');
  return (
    <details>
      <summary>{`${t('choosing')}: ${codes}`}</summary>
      <ul className="plain-list">
        {notices.map((notice) => (
          <li key={notice.id} className="signal">
            <NoticeText notice={notice} language={language} />
          </li>
        ))}
      </ul>
    </details>
  );
}
