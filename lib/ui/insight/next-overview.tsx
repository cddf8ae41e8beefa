import type { Route } from 'next';
import Link from 'next/link';
import type { NextAnswer, NextPart } from '@/lib/analysis/next-question/next-answer';
import { DataTable } from '../table/data-table';
import { FigureLink } from './figure-link';
import type { InsightWords } from './insight-words';
import { methodList } from './next-names';

/** Every site with what it would do best with, by name; nothing is ranked. */
export function NextOverview({
  answer,
  words,
}: {
  readonly answer: NextAnswer;
  readonly words: InsightWords;
}) {
  const { t, names, language } = words;
  const sites = answer.sites
    .filter(({ choices }) => choices.length > 0)
    .toSorted((a, b) => names.siteName(a.siteId).localeCompare(names.siteName(b.siteId), language));
  const told = sites.filter((part) => kindOf(part) === 'told').length;
  const open = sites.filter((part) => kindOf(part) === 'open').length;
  const figure = (key: 'loss' | 'yield') => ({
    key,
    header: t(`next.allColumns.${key}`),
    unit: '%',
    numeric: true,
    cell: (part: NextPart) => {
      const outlook = leaderOf(part);
      return outlook ? <FigureLink figure={outlook[key]} words={words} /> : '–';
    },
  });
  return (
    <>
      <p className="answer-sentence">{t('next.allLead', { sites: told, open })}</p>
      <DataTable
        caption={t('next.all')}
        rows={sites}
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
            cell: (part) => {
              const verdict = part.choices[0]?.verdict;
              return (
                <>
                  {names.methodName(leaderOf(part)?.methodId ?? 'none')}
                  {verdict?.kind === 'told' && verdict.equal.length > 0 ? (
                    <span className="cell-reason">
                      {t('next.notToldFrom', { methods: methodList(verdict.equal, words) })}
                    </span>
                  ) : null}
                </>
              );
            },
          },
          figure('loss'),
          figure('yield'),
        ]}
      />
      <p className="quiet">{t('next.note')}</p>
    </>
  );
}

function leaderOf({ choices: [first] }: NextPart) {
  if (first === undefined || first.verdict.kind === 'cannot') return undefined;
  const { leader } = first.verdict;
  return first.outlooks.find(({ methodId }) => methodId === leader);
}

/** Told from at least one other method and level with none, still open, or nothing to choose. */
function kindOf({ choices: [first] }: NextPart): 'told' | 'open' | 'none' {
  if (first === undefined || first.verdict.kind === 'cannot') return 'none';
  const { equal, worse } = first.verdict;
  if (equal.length > 0) return 'open';
  return worse.length > 0 ? 'told' : 'none';
}
