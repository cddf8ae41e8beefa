import type { Route } from 'next';
import Link from 'next/link';
import { getTranslations } from 'next-intl/server';
import type { CostSubject, PricedLot } from '@/lib/records/cost/cost.input';

type Props = { readonly of: CostSubject | PricedLot; readonly id: string };

/** Leads to what a batch, a treatment or a lot cost. */
export async function CostLink({ of, id }: Props) {
  const t = await getTranslations('costs');
  return (
    <p className="no-print">
      <Link href={`/costs/${of}/${id}` as Route}>{t('link')}</Link>
    </p>
  );
}
