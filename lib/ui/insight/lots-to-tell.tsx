import type { Route } from 'next';
import type { JudgedLot } from '@/lib/analysis/lot-question/lots-answer';
import type { ToldLot } from '@/lib/records/lot-notice/list-told-lots.query';
import { KeptCodes } from '../page/kept-codes';
import { Link } from '../page/link';
import type { InsightWords } from './insight-words';

type Props = {
  readonly lots: readonly JudgedLot[];
  readonly codeOf: (lot: JudgedLot) => string;
  readonly told: readonly ToldLot[];
  readonly words: Pick<InsightWords, 't'>;
};

/** Of each lot that loses more the way to tell its sites, or the notice that stands already and how far it is read. */
export function LotsToTell({ lots, codeOf, told, words: { t } }: Props) {
  if (lots.length === 0) return null;
  return (
    <ul>
      {lots.map((lot) => {
        const notice = told.find(({ lotId }) => lotId === lot.lotId);
        return (
          <li key={lot.lotId}>
            {notice === undefined ? (
              <Link href={`/lot-notices/new/spawn-lot/${lot.lotId}?called=out` as Route}>
                <KeptCodes text={t('lots.tell', { lot: codeOf(lot) })} />
              </Link>
            ) : (
              <>
                <KeptCodes
                  text={t('lots.told', { lot: codeOf(lot), read: notice.readSites, sites: notice.sites })}
                />{' '}
                <Link href={`/spawn-lots/${lot.lotId}` as Route}>{t('lots.toldOpen')}</Link>
              </>
            )}
          </li>
        );
      })}
    </ul>
  );
}
