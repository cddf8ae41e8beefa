import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { BatchView } from '@/lib/records/batch/batch-view';
import { ButtonLink } from '../page/button-link';
import { Notice } from '../page/notice';

type Props = {
  readonly batch: Pick<BatchView, 'id' | 'containerKind' | 'unitCount' | 'closedOn' | 'voidReason'>;
  /** What the address says, as the code of a label leads here. */
  readonly unit: string | string[] | undefined;
};

/** Which unit's label was read, and what is usually written down with it in hand. */
export async function ScannedUnit({ batch, unit }: Props) {
  const number = typeof unit === 'string' && /^\d{1,5}$/.test(unit) ? Number(unit) : 0;
  if (number < 1 || number > batch.unitCount) return null;
  const t = await getTranslations('labels');
  const open = batch.closedOn === null && batch.voidReason === null;
  return (
    <>
      <Notice>{t(`unit.${batch.containerKind}`, { unit: number, count: batch.unitCount })}</Notice>
      {open ? (
        <p className="chips no-print">
          <ButtonLink href={`/quick/harvest?batch=${batch.id}` as Route}>{t('scanned.harvest')}</ButtonLink>
          <ButtonLink href={`/batches/${batch.id}/findings/new?units=1&unitNumbers=${number}` as Route} plain>
            {t('scanned.finding')}
          </ButtonLink>
        </p>
      ) : null}
    </>
  );
}
