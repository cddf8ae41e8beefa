import type { Route } from 'next';
import type { ReactNode } from 'react';
import type { OriginQuestion } from '@/lib/analysis/lot-question/answer-origins';
import type { JudgedOrigin, OriginsAnswer } from '@/lib/analysis/lot-question/judged-origin';
import { byCode } from '../format/by-code';
import { formatInterval } from '../format/interval-text';
import { KeptCodes } from '../page/kept-codes';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import type { InsightWords } from './insight-words';
import { type LotApart, LotsToldApart } from './lots-told-apart';

type Props = {
  readonly of: OriginQuestion;
  readonly answer: OriginsAnswer;
  /** Codes of material lots by id. */
  readonly codes: ReadonlyMap<string, string>;
  /** Codes of spawn lots called out, whose batches say nothing about the material. */
  readonly apart: readonly string[];
  /** Lots called out that a maker or source is judged without. */
  readonly apartFrom: (origin: string) => readonly LotApart[];
  readonly words: InsightWords;
};

/** Which material lots, makers or sources lose more than their sites and methods would anyway, and every one beside that. */
export function OriginsAnswerView({ of, answer, codes, apart, apartFrom, words }: Props) {
  const { t, locale, language, number } = words;
  const ofLots = of === 'materialLots';
  if (answer.kind === 'cannot')
    return (
      <p className="answer-sentence">
        {answer.reason === 'too-few-lots' ? t(`origins.${of}.cannot`) : t(`lots.cannot.${answer.reason}`)}
      </p>
    );
  const nameOf = ({ origin }: JudgedOrigin) => (ofLots ? (codes.get(origin) ?? '–') : origin);
  const list = new Intl.ListFormat(language, { type: 'conjunction' });
  const without = ({ origin }: JudgedOrigin) => list.format(apartFrom(origin).map(({ code }) => code));
  const order = byCode(language);
  const origins = [...answer.origins].sort((a, b) => order(nameOf(a), nameOf(b)));
  const bad = origins.filter(({ verdict }) => verdict === 'loses-more');
  const judged = origins.filter(({ verdict }) => verdict !== 'too-few-lots').length;
  const sentence = () => {
    if (bad.length > 0)
      return bad
        .map((one) =>
          t(`origins.${of}.bad`, {
            ...{ name: nameOf(one), lots: one.lots, units: words.units },
            ...{ observed: number(one.observed), expected: number(one.expected) },
            ...{ some: apartFrom(one.origin).length, apart: without(one) },
          }),
        )
        .join(' ');
    return judged === 0 && of !== 'materialLots'
      ? t(`origins.${of}.nobody`)
      : t(`origins.${of}.none`, { count: judged });
  };
  return (
    <>
      <p className="answer-sentence">
        <KeptCodes text={sentence()} />
      </p>
      <LotsToldApart of={of} origins={origins} apartFrom={apartFrom} words={words} />
      {judged === 0 ? null : <p>{bad.length === 0 ? t('origins.nextNone') : t(`origins.${of}.next`)}</p>}
      {ofLots && bad.length > 0 ? (
        <ul>
          {bad.map((one) => (
            <li key={one.origin}>
              <Link href={`/lot-notices/new/substrate-lot/${one.origin}?called=out` as Route}>
                <KeptCodes text={t('lots.tell', { lot: nameOf(one) })} />
              </Link>
            </li>
          ))}
        </ul>
      ) : null}
      <DataTable
        caption={t(`origins.${of}.table`)}
        rows={origins}
        rowKey={({ origin }) => origin}
        columns={[
          {
            key: 'origin',
            header: t(`origins.${of}.column`),
            cell: (one) =>
              ofLots ? (
                <Link href={`/substrate-lots/${one.origin}` as Route} className="whitespace-nowrap">
                  {nameOf(one)}
                </Link>
              ) : (
                <>
                  {one.origin}
                  {without(one) === '' ? null : (
                    <span className="cell-reason">
                      <KeptCodes text={t('origins.without', { lots: without(one) })} />
                    </span>
                  )}
                </>
              ),
          },
          {
            key: 'verdict',
            header: t('lots.columns.verdict'),
            cell: ({ verdict }) =>
              verdict === 'too-few-lots' ? t('origins.too-few-lots') : t(`lots.verdict.${verdict}`),
          },
          numeric('ratio', (one) => (
            <>
              {number(one.ratio, 1)} <br className="cell-break" />
              <span className="quiet">({formatInterval(one.low, one.high, locale)})</span>
            </>
          )),
          numeric('observed', (one) => t('lots.of', { found: number(one.observed), of: number(one.units) })),
          numeric('expected', (one) => number(one.expected, 1)),
          ...(ofLots
            ? []
            : [
                {
                  key: 'lots',
                  header: t('origins.lots'),
                  numeric: true,
                  cell: (one: JudgedOrigin) => number(one.lots),
                },
              ]),
          numeric('batches', (one) => number(one.batches)),
          numeric('sites', (one) => number(one.sites)),
        ]}
      />
      <p className="quiet">
        {t(ofLots ? 'origins.lotsNote' : 'origins.makersNote')} {t('origins.control')}
      </p>
      {apart.length === 0 || of === 'spawnMakers' ? null : (
        <p className="quiet">{t('origins.apart', { lots: list.format(apart) })}</p>
      )}
      {answer.leftOut === 0 ? null : <p className="quiet">{t('lots.leftOut', { count: answer.leftOut })}</p>}
    </>
  );

  function numeric(
    key: 'batches' | 'sites' | 'observed' | 'expected' | 'ratio',
    cell: (one: JudgedOrigin) => ReactNode,
  ) {
    return { key, header: t(`lots.columns.${key}`), numeric: true, cell };
  }
}
