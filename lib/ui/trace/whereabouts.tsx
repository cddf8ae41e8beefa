import type { WhereItWent } from '@/lib/records/trace/where-it-went';
import { DataTable } from '../table/data-table';
import type { TraceWords } from './trace-words';

type Props = {
  readonly went: WhereItWent;
  /** Of what: a lot or a run, a batch, or the lots of spawn made from a lot, which are told apart from it. */
  readonly of?: 'lot' | 'batch' | 'made';
  readonly words: TraceWords;
};

/** Where a lot went: how much of it stands and where, first in a sentence, then by site. */
export function Whereabouts({ went, of = 'lot', words }: Props) {
  const { t, totalMass } = words;
  const { all, sites } = went;
  if (all.batches === 0)
    return of === 'made' ? <p>{t('went.madeNone')}</p> : <p className="answer-sentence">{t('went.none')}</p>;
  const counts = { batches: all.batches, sites: sites.length };
  // The batch itself is one of them.
  const later = { later: all.batches - 1 };
  const reached = {
    lot: () => t('went.answer', counts),
    batch: () => t('went.answerBatch', later),
    made: () => t('went.answerMade', { ...counts, lots: went.lotsMade }),
  };
  const rows = sites.length === 1 ? sites : [...sites, { ...all, siteId: 'all', siteName: t('went.all') }];
  const count = (key: 'batches' | 'open' | 'live' | 'contaminated' | 'lost', from: keyof typeof all) => ({
    key,
    header: t(`columns.${key}`),
    numeric: true,
    cell: (row: (typeof rows)[number]) => row[from],
  });
  return (
    <>
      <p className={of === 'made' ? undefined : 'answer-sentence'}>
        {[
          reached[of](),
          all.open === 0 ? t('went.allClosed') : t('went.open', { open: all.open, live: all.live }),
          all.freshGrams === 0
            ? t('went.nothingPicked')
            : t('went.picked', { mass: totalMass(all.freshGrams) }),
        ].join(' ')}
      </p>
      <DataTable
        caption={t(of === 'made' ? 'went.madeSites' : 'went.sites')}
        rows={rows}
        rowKey={({ siteId }) => siteId}
        isTotal={({ siteId }) => siteId === 'all'}
        columns={[
          { key: 'site', header: t('columns.site'), cell: ({ siteName }) => siteName },
          count('batches', 'batches'),
          count('open', 'open'),
          count('live', 'live'),
          count('contaminated', 'contaminated'),
          count('lost', 'lostClean'),
          {
            key: 'picked',
            header: t('columns.picked'),
            numeric: true,
            cell: ({ freshGrams }) => totalMass(freshGrams),
          },
        ]}
      />
    </>
  );
}
