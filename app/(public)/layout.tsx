import { getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import { PageShell } from '@/lib/ui/page/page-shell';

export default async function PublicLayout({ children }: { children: ReactNode }) {
  const t = await getTranslations('common');
  return <PageShell name={t('product')}>{children}</PageShell>;
}
