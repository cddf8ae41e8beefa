import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import { type WatchPeriod, watchPeriods } from '@/lib/analysis/watch-question/watch-period.input';
import { Link } from '../page/link';

/** How far back the list goes. */
export async function PeriodChips({ chosen }: { readonly chosen: WatchPeriod }) {
  const t = await getTranslations('watch.watch');
  return (
    <nav aria-label={t('period')} className="chips no-print">
      {watchPeriods.map((days) => (
        <Link
          key={days}
          href={`/questions/watch?days=${days}` as Route}
          className="chip"
          aria-current={days === chosen ? 'page' : undefined}
        >
          {t('days', { days })}
        </Link>
      ))}
    </nav>
  );
}
