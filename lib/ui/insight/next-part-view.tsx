import type { Route } from 'next';
import type { NextChoice, NextPart, Outlook } from '@/lib/analysis/next-question/next-answer';
import { type NextAsked, queryOfNext } from '@/lib/analysis/next-question/next-choice.input';
import type { NextOptions } from '@/lib/analysis/next-question/read-next-options';
import type { ShortMethod } from '@/lib/analysis/treatment-question/short-methods';
import { DotIntervalChart } from '../chart/dot-interval-chart';
import { toChartRow } from '../chart/to-chart-row';
import { Link } from '../page/link';
import { LinkChips } from '../page/link-chips';
import { DataTable } from '../table/data-table';
import { FigureLink } from './figure-link';
import type { InsightWords } from './insight-words';
import { NextBegin } from './next-begin';
import { NextCautions } from './next-cautions';
import { asInside, methodList } from './next-names';
import { NextOutlook } from './next-outlook';
import type { NextReader } from './next-reader';
import { nextSentence } from './next-sentences';
import { NextStanding } from './next-standing';
import { nextStarts } from './next-starts';
import { NextTeaching } from './next-teaching';
import { seasonWords } from './season-words';
import { ShortMethodsView } from './short-methods-view';

type Props = {
  readonly part: NextPart;
  /** What it says of the species and material asked for. */
  readonly choice: NextChoice | undefined;
  readonly asked: NextAsked;
  /** Methods that the site's own runs mostly did not hold. */
  readonly short: readonly ShortMethod[];
  readonly options: Pick<NextOptions, 'hemisphere' | 'timeZone'>;
  readonly reader: NextReader;
  readonly words: InsightWords;
};

const mixOf = ({ speciesId, materialId }: NextChoice) => `${speciesId}.${materialId}`;

/** What one site could do next, for a coordinator and for its own members alike. */
export function NextPartView({ part, choice, asked, short, options, reader, words }: Props) {
  const { t, names, view, units, number, language } = words;
  const site = names.siteName(part.siteId);
  if (choice === undefined) return <p className="answer-sentence">{t('next.noMix', { site })}</p>;
  const { massUnit } = reader;
  const sorted = [...choice.outlooks].sort((a, b) =>
    names.methodName(a.methodId).localeCompare(names.methodName(b.methodId), language),
  );
  const { recommended, teaches } = nextStarts(choice);
  // Their dangers stand before the ways to begin with them.
  const begun = [recommended, teaches].map((one) => one?.kind);
  const told = sorted.filter((one) => one.yield.kind === 'figure');
  const mixName = (one: NextChoice) =>
    t(one.batches === 0 ? 'next.stock' : 'next.mix', {
      species: names.speciesName(one.speciesId),
      material: names.materialName(one.materialId),
    });
  const figure = (key: 'loss' | 'yield' | 'ownLoss' | 'ownYield') => ({
    key,
    header: t(`next.columns.${key}`),
    unit: '%',
    numeric: true,
    cell: (one: Outlook) =>
      one[key].kind === 'cannot' && one.mixBatches === 0 && key.startsWith('own') ? (
        <span className="quiet">{t('next.noOwn')}</span>
      ) : (
        <FigureLink figure={withoutLink(one[key], reader.role)} words={words} />
      ),
  });
  return (
    <>
      {part.choices.length < 2 ? null : (
        <LinkChips
          label={t('next.mixes')}
          chosen={mixOf(choice)}
          options={part.choices.map((one) => ({
            value: mixOf(one),
            label: mixName(one),
            href: `/questions/next?${queryOfNext({
              ...asked,
              site: part.siteId,
              species: one.speciesId,
              material: one.materialId,
            })}`,
          }))}
        />
      )}
      <ShortMethodsView
        short={short.filter(({ methodId }) => sorted.some((one) => one.methodId === methodId))}
        reader={reader}
        words={words}
      />
      <p className="answer-sentence">{nextSentence({ choice, site, unit: massUnit, words })}</p>
      <p>
        {t('next.for', {
          species: asInside(names.speciesName(choice.speciesId)),
          material: asInside(names.materialName(choice.materialId)),
          count: number(part.usualUnits),
          units,
          season: seasonWords(part.season, options.hemisphere, words),
        })}{' '}
        {t('next.decides', { unit: massUnit })}
      </p>
      <NextStanding choice={choice} part={part} options={options} words={words} />
      {asked.methods ? <p>{t('next.chosenHere', { site })}</p> : null}
      {part.unsaid ? <p>{t('next.unsaid', { site })}</p> : null}
      {recommended === undefined ? null : (
        <NextBegin outlook={recommended} choice={choice} part={part} advised words={words} />
      )}
      <NextTeaching
        choice={choice}
        part={part}
        site={site}
        massUnit={massUnit}
        planning={reader.role === 'coordinator'}
        words={words}
      />
      {told.length === 0 ? null : (
        <DotIntervalChart
          title={t('next.chart')}
          reading={t('next.chartReading')}
          unit="%"
          rows={told.map((one, series) => {
            const label = names.methodName(one.methodId);
            return toChartRow({ key: one.methodId, label, series }, view(one.yield));
          })}
        />
      )}
      {sorted.length === 0 ? null : (
        <DataTable
          caption={t('next.table', { site })}
          rows={sorted}
          rowKey={({ methodId }) => methodId}
          columns={[
            {
              key: 'method',
              header: t('next.columns.method'),
              cell: ({ methodId }) => names.methodName(methodId),
            },
            figure('loss'),
            figure('yield'),
            figure('ownLoss'),
            figure('ownYield'),
          ]}
        />
      )}
      <NextCautions kinds={sorted.flatMap(({ kind }) => (begun.includes(kind) ? [] : [kind]))} />
      {sorted.length === 0 ? null : <h2>{t('next.methodsHeading')}</h2>}
      {sorted.map((outlook) => (
        <NextOutlook
          key={outlook.methodId}
          outlook={outlook}
          part={part}
          short={short.find(({ methodId }) => methodId === outlook.methodId)}
          reader={reader}
          open={choice.verdict.kind === 'told' && choice.verdict.leader === outlook.methodId}
          words={words}
        />
      ))}
      <Unsuited choice={choice} words={words} />
      {choice.notHere.length === 0 ? null : (
        <p>
          {t(asked.methods ? 'next.notChosen' : 'next.notHere', {
            site,
            methods: methodList(choice.notHere, words),
          })}
        </p>
      )}
      <p className="no-print">
        <Link href={`/sites/${part.siteId}/methods` as Route}>{t('next.saying', { site })}</Link>
      </p>
      <p className="quiet">{t('next.note')}</p>
    </>
  );
}

/** The rows behind a figure are a coordinator's page. */
function withoutLink(figure: Outlook['loss'], role: string): Outlook['loss'] {
  return role === 'coordinator' ? figure : { ...figure, rowsQuery: '' };
}

function Unsuited({ choice, words }: { readonly choice: NextChoice; readonly words: InsightWords }) {
  const { t, language, names } = words;
  if (choice.unsuited.length === 0) return null;
  return (
    <>
      <h2>{t('next.unsuitedHeading')}</h2>
      <ul>
        {choice.unsuited.map(({ methodId, reasons }) => (
          <li key={methodId}>
            {names.methodName(methodId)}: {reasons.map((one) => one[language]).join(' ')}
          </li>
        ))}
      </ul>
    </>
  );
}
