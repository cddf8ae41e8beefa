import type { Route } from 'next';
import { getLocale, getTranslations } from 'next-intl/server';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import { formatDate } from '../format/date-text';
import { Link } from '../page/link';

type Receipt = {
  readonly id: string;
  readonly siteName: string;
  readonly receivedOn: string;
  readonly grams: number;
};

type Props = {
  readonly receipts: readonly Receipt[];
  readonly massUnit: MassUnit;
  readonly voidPath: (receiptId: string) => string;
};

/** Which site got how much of a lot, and when. */
export async function Receipts({ receipts, massUnit, voidPath }: Props) {
  const t = await getTranslations('lots');
  const common = await getTranslations('common');
  const locale = await getLocale();
  return (
    <>
      <h2>{t('receiptsHeading')}</h2>
      {receipts.length === 0 ? (
        <p>{t('noReceipts')}</p>
      ) : (
        <ul>
          {receipts.map((receipt) => (
            <li key={receipt.id}>
              {t('receipt', {
                site: receipt.siteName,
                mass: formatMass(receipt.grams, massUnit, locale),
                date: formatDate(receipt.receivedOn, locale),
              })}{' '}
              <Link href={voidPath(receipt.id) as Route}>{common('void')}</Link>
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
