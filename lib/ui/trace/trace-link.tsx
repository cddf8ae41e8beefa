import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { TracedKind } from '@/lib/records/trace/trace-link';
import { Link } from '../page/link';

/** From a record's page to its trace. */
export async function TraceLink({ kind, id }: { readonly kind: TracedKind; readonly id: string }) {
  const t = await getTranslations('trace');
  return (
    <p>
      <Link href={`/trace/${kind}/${id}` as Route}>{t('link')}</Link>
    </p>
  );
}
