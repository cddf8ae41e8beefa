import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { JudgedLot } from '@/lib/analysis/lot-question/lots-answer';
import { formatInstant } from '../format/instant-text';
import { formatNumber } from '../format/number-text';
import { Link } from '../page/link';

type Props = { readonly judged: JudgedLot; readonly fittedAt: string; readonly timeZone: string };

/** What the question of lots last said of a lot: whether it loses more, from which counts, and when. */
export async function LotVerdict({ judged, fittedAt, timeZone }: Props) {
  const t = await getTranslations('lots.verdict');
  const locale = await getLocale();
  const number = (value: number) => formatNumber(value, locale, 0);
  return (
    <>
      <Link href={'/questions/lots' as Route}>{t(judged.verdict)}</Link>
      {': '}
      {t('counts', {
        ...{ observed: number(judged.observed), units: judged.units },
        ...{ expected: number(judged.expected), batches: judged.batches },
        when: formatInstant(new Date(fittedAt), timeZone, locale),
      })}
    </>
  );
}
