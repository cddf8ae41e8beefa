import type { Route } from 'next';
import type { SiteFunnel, SitePart, SitesAnswer } from '@/lib/analysis/site-question/sites-answer';
import { Link } from '../page/link';
import type { Column } from '../table/column-header';
import { DataTable } from '../table/data-table';
import { FigureLink } from './figure-link';
import type { InsightWords } from './insight-words';
import { ListPager } from './list-pager';
import { SiteFunnelView } from './site-funnel-view';
import { sitesListed } from './sites-listed';
import { sitesSentence } from './sites-sentence';

type Props = {
  readonly answer: SitesAnswer;
  readonly words: InsightWords;
  /** The address of the page, which names the page of a long list. */
  readonly address: Readonly<Record<string, string | string[] | undefined>>;
};

/** Which sites can be told from a typical one, the funnel, and every site beside a typical one, by name. */
export function SitesAnswerView({ answer, words, address }: Props) {
  const { t, names, language, codeOf } = words;
  const sites = [...answer.sites].sort((a, b) =>
    names.siteName(a.siteId).localeCompare(names.siteName(b.siteId), language),
  );
  const listed = sitesListed(sites, address.page);
  const figure = (key: 'raw' | 'shrunk' | 'typical') => ({
    key,
    header: t(`sites.columns.${key}`),
    unit: '%',
    numeric: true,
    cell: (site: SitePart) => <FigureLink figure={site[key]} words={words} />,
  });
  const signals = ({ course, signals: begun }: SitePart) =>
    course === null ? t('sites.tooFew') : t('sites.signals', { count: begun.length });
  return (
    <>
      <p className="answer-sentence">{sitesSentence(sites, words)}</p>
      <p>
        {t(`sites.next.${nextOf(sites)}`)} {t('sites.order')}
      </p>
      {answer.funnel === null ? null : (
        <SiteFunnelView funnel={answer.funnel} named={toldApart(sites)} words={words} />
      )}
      {listed.count === sites.length ? null : (
        <p>
          {t('sites.listed', { count: listed.count, all: sites.length })}{' '}
          <Link href="/sites">{t('sites.look')}</Link>
        </p>
      )}
      {listed.count === 0 ? null : (
        <DataTable
          caption={t('sites.table')}
          rows={listed.rows}
          rowKey={({ siteId }) => siteId}
          columns={[
            {
              key: 'site',
              header: t('sites.columns.site'),
              cell: ({ siteId }) => (
                <>
                  <Link href={`/questions/sites/${siteId}` as Route}>{names.siteName(siteId)}</Link>{' '}
                  <span className="quiet">{codeOf(siteId)}</span>
                </>
              ),
            },
            {
              key: 'verdict',
              header: t('sites.columns.verdict'),
              cell: ({ verdict }) => t(`sites.verdict.${verdict}`),
            },
            figure('shrunk'),
            figure('typical'),
            figure('raw'),
            ...(answer.funnel === null ? [] : [unitsColumn(answer.funnel, words)]),
            { key: 'course', header: t('sites.columns.course'), cell: signals },
          ]}
        />
      )}
      <ListPager of="sites" path="/questions/sites" listed={listed} address={address} words={words} />
      <p className="quiet">{t('sites.shrunkNote')}</p>
    </>
  );
}

const toldApart = (sites: readonly SitePart[]) =>
  new Set(sites.flatMap(({ siteId, verdict }) => (verdict === 'alike' ? [] : [siteId])));

function unitsColumn({ places }: SiteFunnel, { t, number }: InsightWords): Column<SitePart> {
  const unitsOf = new Map(places.map(({ siteId, units }) => [siteId, units]));
  return {
    key: 'units',
    header: t('sites.columns.units'),
    numeric: true,
    cell: ({ siteId }) => {
      const units = unitsOf.get(siteId);
      return units === undefined ? '–' : number(units);
    },
  };
}

/** What there is to do depends on who can be told from a typical site. */
function nextOf(sites: readonly SitePart[]): 'both' | 'more' | 'fewer' | 'none' {
  const some = (verdict: SitePart['verdict']) => sites.some((site) => site.verdict === verdict);
  if (some('more')) return some('fewer') ? 'both' : 'more';
  return some('fewer') ? 'fewer' : 'none';
}
