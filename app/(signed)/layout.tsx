import { getLocale, getMessages, getTranslations } from 'next-intl/server';
import type { ReactNode } from 'react';
import { requireActor } from '@/lib/access/current';
import { navItems } from '@/lib/ui/access/nav-items';
import { keepWordsOf } from '@/lib/ui/offline/offline-words';
import { PhoneKeeper } from '@/lib/ui/offline/phone-keeper';
import { PageShell } from '@/lib/ui/page/page-shell';

export default async function SignedLayout({ children }: { children: ReactNode }) {
  const actor = await requireActor();
  const t = await getTranslations('access.nav');
  const { status } = keepWordsOf(await getMessages(), await getLocale());
  const keeper =
    actor.role === 'funder' ? undefined : (
      <PhoneKeeper
        personId={actor.personId}
        networkId={actor.networkId}
        words={status}
        worker={process.env.NODE_ENV === 'production'}
      />
    );
  return (
    <PageShell
      name={actor.networkName}
      nav={navItems(actor.role, t)}
      own={{ href: '/account', label: actor.name }}
      account={keeper}
    >
      {children}
    </PageShell>
  );
}
