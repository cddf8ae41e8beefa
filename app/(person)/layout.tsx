import { getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import { requirePerson } from '@/lib/access/current';
import { PageShell } from '@/lib/ui/page/page-shell';

export default async function PersonLayout({ children }: { children: ReactNode }) {
  await requirePerson();
  const t = await getTranslations('common');
  return <PageShell name={t('product')}>{children}</PageShell>;
}
