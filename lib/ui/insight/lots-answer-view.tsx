import type { Route } from 'next';
import type { JudgedLot, LotsAnswer } from '@/lib/analysis/lot-question/lots-answer';
import type { ToldLot } from '@/lib/records/lot-notice/list-told-lots.query';
import { byCode } from '../format/by-code';
import { formatInterval } from '../format/interval-text';
import { KeptCodes } from '../page/kept-codes';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import type { InsightWords } from './insight-words';
import { ListPager } from './list-pager';
import { LotsToTell } from './lots-to-tell';
import { pageOfList } from './page-of-list';

type Props = {
  readonly answer: LotsAnswer;
  /** Codes of the lots by id. */
  readonly codes: ReadonlyMap<string, string>;
  /** Lots that sites have been told about already. */
  readonly told: readonly ToldLot[];
  readonly words: InsightWords;
  /** The address of the page, which names the page of a long list. */
  readonly address: Readonly<Record<string, string | string[] | undefined>>;
};

/** More lots than this are listed some a page. */
const mostLotsListed = 100;

/** Which lots lose more than their sites and methods would anyway, and every lot beside that, by code. */
export function LotsAnswerView({ answer, codes, told, words, address }: Props) {
  const { t, locale, language, number } = words;
  if (answer.kind === 'cannot') return <p className="answer-sentence">{t(`lots.cannot.${answer.reason}`)}</p>;
  const codeOf = ({ lotId }: JudgedLot) => codes.get(lotId) ?? '–';
  const order = byCode(language);
  const lots = [...answer.lots].sort((a, b) => order(codeOf(a), codeOf(b)));
  const bad = lots.filter(({ verdict }) => verdict === 'loses-more');
  const others = lots.filter(({ verdict }) => verdict !== 'loses-more');
  const listed = pageOfList(others, address.page, mostLotsListed);
  return (
    <>
      <p className="answer-sentence">
        <KeptCodes
          text={
            bad.length === 0
              ? t('lots.none', { count: lots.length })
              : bad
                  .map((lot) =>
                    t('lots.bad', {
                      lot: codeOf(lot),
                      observed: number(lot.observed),
                      expected: number(lot.expected),
                      units: words.units,
                    }),
                  )
                  .join(' ')
          }
        />
      </p>
      <p>{t(bad.length === 0 ? 'lots.nextNone' : 'lots.next')}</p>
      <LotsToTell lots={bad} codeOf={codeOf} told={told} words={words} />
      {bad.length === 0 ? null : table(bad)}
      {others.length === 0 ? null : (
        <details className="printed-fold" open={bad.length === 0 || address.page !== undefined}>
          <summary>{t('lots.othersFold', { count: others.length })}</summary>
          {table(listed.rows)}
        </details>
      )}
      <ListPager of="lots" path="/questions/lots" listed={listed} address={address} words={words} />
      <p className="quiet">{t('lots.note')}</p>
      {answer.leftOut === 0 ? null : <p className="quiet">{t('lots.leftOut', { count: answer.leftOut })}</p>}
    </>
  );

  function table(rows: readonly JudgedLot[]) {
    return (
      <DataTable
        caption={t('lots.table')}
        rows={rows}
        rowKey={({ lotId }) => lotId}
        columns={[
          {
            key: 'lot',
            header: t('lots.columns.lot'),
            cell: (lot) => (
              <Link href={`/spawn-lots/${lot.lotId}` as Route} className="whitespace-nowrap">
                {codeOf(lot)}
              </Link>
            ),
          },
          {
            key: 'verdict',
            header: t('lots.columns.verdict'),
            cell: ({ verdict }) => t(`lots.verdict.${verdict}`),
          },
          numeric('ratio', (lot) => (
            <>
              {number(lot.ratio, 1)} <br className="cell-break" />
              <span className="quiet">({formatInterval(lot.low, lot.high, locale)})</span>
            </>
          )),
          numeric(
            'observed',
            (lot) => t('lots.of', { found: number(lot.observed), of: number(lot.units) }),
            words.units,
          ),
          numeric('expected', (lot) => number(lot.expected, 1), words.units),
          numeric('batches', (lot) => number(lot.batches)),
          numeric('sites', (lot) => number(lot.sites)),
        ]}
      />
    );
  }

  function numeric(
    key: 'batches' | 'sites' | 'observed' | 'expected' | 'ratio',
    cell: (lot: JudgedLot) => React.ReactNode,
    unit?: string,
  ) {
    const of = unit === undefined ? {} : { unit };
    return { key, header: t(`lots.columns.${key}`), numeric: true, cell, ...of };
  }
}
