import { getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import { currentActor, requirePerson } from '@/lib/access/current';
import { navItems } from '@/lib/ui/access/nav-items';
import { PageShell } from '@/lib/ui/page/page-shell';

export default async function PersonLayout({ children }: { children: ReactNode }) {
  const { name } = await requirePerson();
  const actor = await currentActor();
  const t = await getTranslations('common');
  const nav = await getTranslations('access.nav');
  if (actor === undefined) return <PageShell name={t('product')}>{children}</PageShell>;
  return (
    <PageShell
      name={actor.networkName}
      nav={navItems(actor.role, nav)}
      own={{ href: '/account', label: name }}
    >
      {children}
    </PageShell>
  );
}
