import { getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import { requireActor } from '@/lib/access/current';
import { navItems } from '@/lib/ui/access/nav-items';
import { PageShell } from '@/lib/ui/page/page-shell';

export default async function SignedLayout({ children }: { children: ReactNode }) {
  const actor = await requireActor();
  const t = await getTranslations('access.nav');
  return (
    <PageShell
      name={actor.networkName}
      nav={navItems(actor.role, t)}
      own={{ href: '/account', label: actor.name }}
    >
      {children}
    </PageShell>
  );
}
