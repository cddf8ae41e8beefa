import { getTranslations } from 'next-intl/server';
import { Notice } from '../page/notice';

const said = { notice: 'sent', withdrawn: 'withdrawn', read: 'readSaved' } as const;

/** On a lot's page: what just happened to a notice about it. */
export async function NoticeSaved({ saved }: { readonly saved: unknown }) {
  const t = await getTranslations('notices');
  const key = Object.entries(said).find(([name]) => name === saved)?.[1];
  return key === undefined ? null : <Notice>{t(key)}</Notice>;
}
