import type { Route } from 'next';
import type { CostsAnswer } from '@/lib/analysis/costs/read-costs';
import { asInside } from '../insight/next-names';
import { Link } from '../page/link';
import { DataTable } from '../table/data-table';
import { CostsTable } from './costs-table';
import type { CostsWords } from './costs-words';

type Props = { readonly answer: CostsAnswer; readonly words: CostsWords };

/** What a kilogram or a pound cost in one sentence, then what is missing, then the tables behind it. */
export function CostsAnswerView({ answer, words }: Props) {
  const { t, money } = words;
  const { batches, labourMinorPerHour, missing } = answer;
  const [first] = missing;
  const withoutLimits = answer.methods.some(
    ({ cost }) => cost.kind === 'figure' && cost.interval.kind === 'none',
  );
  return (
    <>
      <p className="answer-sentence">{sentenceOf(answer, words)}</p>
      {withoutLimits ? <p>{t('doubt')}</p> : null}
      {first ? (
        <p>
          {t('mostMissing', { part: t(`part.${first.part}`), batches: first.batches })} {t('next')}
        </p>
      ) : null}
      <p>
        {labourMinorPerHour === null ? t('without') : t('with', { value: money(labourMinorPerHour) })}{' '}
        <Link href={'/settings/money' as Route}>{t('change')}</Link>
      </p>
      {batches === 0 ? null : (
        <>
          <CostsTable by="method" groups={answer.methods} words={words} />
          <CostsTable by="site" groups={answer.sites} words={words} />
        </>
      )}
      {missing.length === 0 ? null : (
        <>
          <h2>{t('missingHeading')}</h2>
          <p>{t('missingHelp')}</p>
          <DataTable
            caption={t('missingCaption')}
            rows={missing}
            rowKey={({ part }) => part}
            columns={[
              { key: 'part', header: t('missingPartHeader'), cell: ({ part }) => t(`part.${part}`) },
              {
                key: 'batches',
                header: t('missingBatches'),
                numeric: true,
                cell: ({ batches: count }) => t('fullOf', { full: count, all: batches }),
              },
            ]}
          />
        </>
      )}
      <p className="quiet">{t('method', { unit: words.massUnit })}</p>
    </>
  );
}

function sentenceOf({ batches, fullBatches, methods }: CostsAnswer, words: CostsWords): string {
  const { t, locale, massUnit: unit, money, perUnit, method } = words;
  if (batches === 0) return t('noBatches', { unit });
  if (fullBatches === 0) return t('noneFull', { all: batches, unit });
  const parts = methods
    .flatMap(({ key, cost }) =>
      cost.kind === 'figure' ? [{ name: method(key), cost: money(perUnit(cost.minorPerKg)) }] : [],
    )
    .sort((a, b) => a.name.localeCompare(b.name, locale))
    .map(({ name, cost }) => t('answerPart', { cost, method: asInside(name) }));
  if (parts.length === 0) return t('nothingPicked', { unit });
  const list = new Intl.ListFormat(locale, { type: 'conjunction' });
  return t('answer', { parts: list.format(parts), full: fullBatches, all: batches, unit });
}
