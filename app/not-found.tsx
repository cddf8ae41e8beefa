import { getTranslations } from 'next-intl/server';
import { NotThere } from '@/lib/ui/page/not-there';
import { PageShell } from '@/lib/ui/page/page-shell';

export default async function NotFound() {
  const t = await getTranslations('common');
  return (
    <PageShell name={t('product')}>
      <NotThere />
    </PageShell>
  );
}
