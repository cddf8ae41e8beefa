import type { Route } from 'next';
import type { NextAnswer, NextBrief } from '@/lib/analysis/next-question/next-answer';
import { mostSitesListed } from '@/lib/base/most-sites-listed';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import { FigureLink } from './figure-link';
import type { InsightWords } from './insight-words';
import { ListPager } from './list-pager';
import { methodList } from './next-names';
import { pageOfList } from './page-of-list';

/** Every site with what it would do best with, by name; nothing is ranked. */
export function NextOverview({
  answer,
  words,
  address,
}: {
  readonly answer: NextAnswer;
  readonly words: InsightWords;
  /** The address of the page, which names the page of a long list. */
  readonly address: Readonly<Record<string, string | string[] | undefined>>;
}) {
  const { t, names, language } = words;
  const sites = answer.briefs.toSorted((a, b) =>
    names.siteName(a.siteId).localeCompare(names.siteName(b.siteId), language),
  );
  const listed = pageOfList(sites, address.page, mostSitesListed);
  const told = sites.filter(({ state }) => state === 'told').length;
  const open = sites.filter(({ state }) => state === 'open').length;
  const figure = (key: 'loss' | 'yield') => ({
    key,
    header: t(`next.allColumns.${key}`),
    unit: '%',
    numeric: true,
    cell: ({ best }: NextBrief) => (best ? <FigureLink figure={best[key]} words={words} /> : '–'),
  });
  return (
    <>
      <p className="answer-sentence">{t('next.allLead', { sites: told, open })}</p>
      <DataTable
        caption={t('next.all')}
        rows={listed.rows}
        rowKey={({ siteId }) => siteId}
        columns={[
          {
            key: 'site',
            header: t('next.allColumns.site'),
            cell: ({ siteId }) => (
              <Link href={`/questions/next?site=${siteId}` as Route}>{names.siteName(siteId)}</Link>
            ),
          },
          {
            key: 'best',
            header: t('next.allColumns.best'),
            cell: ({ best }) => (
              <>
                {names.methodName(best?.methodId ?? 'none')}
                {best && best.equal.length > 0 ? (
                  <span className="cell-reason">
                    {t('next.notToldFrom', { methods: methodList(best.equal, words) })}
                  </span>
                ) : null}
              </>
            ),
          },
          figure('loss'),
          figure('yield'),
        ]}
      />
      <ListPager of="sites" path="/questions/next" listed={listed} address={address} words={words} />
      <p className="quiet">{t('next.note')}</p>
    </>
  );
}
