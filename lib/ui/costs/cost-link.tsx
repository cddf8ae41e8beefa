import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { CostSubject, PricedLot } from '@/lib/records/cost/cost.input';
import { Link } from '../page/link';

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
