import type { Route } from 'next';
import { getTranslations } from 'next-intl/server';
import type { VoidableKind } from '@/lib/records/void/void-record.input';
import { Link } from './link';
import { Notice } from './notice';

type Props = {
  /** The record's own page. */
  readonly path: string;
  readonly kind: VoidableKind;
  readonly id: string;
  readonly voided: { readonly reason: string } | null;
  /** A courtesy: the data layer decides whether a correction is taken. */
  readonly mayChange: boolean;
  /** Of a site that has left a record may be voided, not corrected. */
  readonly mayCorrect?: boolean;
};

/** What can be done with any record: correct it, void it, read its history; or that it was voided and why. */
export async function RecordLinks({ path, kind, id, voided, mayChange, mayCorrect = true }: Props) {
  const t = await getTranslations('common');
  return (
    <>
      {voided === null ? null : <Notice tone="watch">{t('voidedNotice', { reason: voided.reason })}</Notice>}
      <p className="record-links chips no-print">
        {voided === null && mayChange ? (
          <>
            {mayCorrect ? <Link href={`${path}/correct` as Route}>{t('correct')}</Link> : null}
            <Link href={`/void/${kind}/${id}?back=${path}` as Route}>{t('void')}</Link>
          </>
        ) : null}
        <Link href={`/history/${id}`}>{t('history.link')}</Link>
      </p>
    </>
  );
}
