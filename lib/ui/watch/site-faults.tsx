import { getLocale, getTranslations } from 'next-intl/server';
import type { FaultEffect, FaultKind, RecordFault } from '@/lib/analysis/record-question/record-fault';
import { formatDate } from '../format/date-text';
import { Link } from '../page/link';
import { mendPath } from './mend-path';

type Props = {
  readonly site: string;
  readonly siteId: string;
  readonly faults: readonly RecordFault[];
  /** Every kind in the order of the page, with what it takes away from. */
  readonly kinds: Readonly<Record<FaultKind, FaultEffect>>;
  readonly open: boolean;
};

/** So many of one kind are linked; the rest is counted, since whoever mends these comes back. */
const mostLinked = 8;

/** What is missing or hard to believe at one site, kind by kind, each record with the form that mends it. */
export async function SiteFaults({ site, siteId, faults, kinds, open }: Props) {
  const t = await getTranslations('watch.records');
  const locale = await getLocale();
  const found = (Object.keys(kinds) as FaultKind[]).flatMap((kind) => {
    const own = faults.filter((fault) => fault.kind === kind);
    return own.length === 0 ? [] : [{ kind, own }];
  });
  const uninspected = faults.filter(({ kind }) => kind === 'not-inspected').length;
  return (
    <details id={`site-${siteId}`} open={open} className="fault-site">
      <summary>{t('siteCount', { site, count: faults.length, uninspected })}</summary>
      {found.map(({ kind, own }) => (
        <section key={kind}>
          <h3>
            {t(`kind.${kind}`)} <span className="quiet">({own.length})</span>
          </h3>
          <p className="quiet">{t(`effectOf.${kinds[kind]}`)}</p>
          <ul>
            {own.slice(0, mostLinked).map((fault) => (
              <li key={fault.id}>
                <Link href={mendPath(fault)}>{fault.code}</Link>{' '}
                <span className="quiet">{t('since', { when: formatDate(fault.on, locale) })}</span>
              </li>
            ))}
            {own.length > mostLinked ? (
              <li className="quiet">{t('more', { count: own.length - mostLinked })}</li>
            ) : null}
          </ul>
        </section>
      ))}
    </details>
  );
}
