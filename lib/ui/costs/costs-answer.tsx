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
  const few = fewOf(answer, words);
  const withoutLimits = answer.methods.some(
    ({ cost }) => cost.kind === 'figure' && cost.interval.kind === 'none',
  );
  return (
    <>
      <p className="answer-sentence">{sentenceOf(answer, words)}</p>
      {few === undefined ? null : <p>{few}</p>}
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

type Costed = CostsAnswer['methods'][number];
type Told = Costed & { readonly cost: Extract<Costed['cost'], { kind: 'figure' }> };

/** Methods by what they rest on: a cost without limits is an account of a few batches, no cost of the method. */
function byGround(methods: CostsAnswer['methods'], { locale, method }: CostsWords) {
  const figures = methods
    .flatMap(({ cost, ...rest }): Told[] => (cost.kind === 'figure' ? [{ ...rest, cost }] : []))
    .sort((a, b) => method(a.key).localeCompare(method(b.key), locale));
  const limited = figures.filter(({ cost }) => cost.interval.kind === 'interval');
  return limited.length === 0
    ? { told: figures, few: [] }
    : { told: limited, few: figures.filter((one) => !limited.includes(one)) };
}

function sentenceOf({ batches, fullBatches, methods }: CostsAnswer, words: CostsWords): string {
  const { t, locale, massUnit: unit, money, perUnit, method } = words;
  if (batches === 0) return t('noBatches', { unit });
  if (fullBatches === 0) return t('noneFull', { all: batches, unit });
  const { told } = byGround(methods, words);
  if (told.length === 0) return t('nothingPicked', { unit });
  const parts = told.map(({ key, cost }) =>
    t('answerPart', { cost: money(perUnit(cost.minorPerKg)), method: asInside(method(key)) }),
  );
  const list = new Intl.ListFormat(locale, { type: 'conjunction' });
  const full = told.reduce((sum, { cost }) => sum + cost.batches, 0);
  return t('answer', { parts: list.format(parts), full, all: batches, unit });
}

function fewOf({ methods }: CostsAnswer, words: CostsWords): string | undefined {
  const { t, locale, method } = words;
  const { few } = byGround(methods, words);
  if (few.length === 0) return undefined;
  const parts = few.map(({ key, cost }) =>
    t('fewPart', { method: asInside(method(key)), batches: cost.batches }),
  );
  return t('few', { parts: new Intl.ListFormat(locale, { type: 'conjunction' }).format(parts) });
}
