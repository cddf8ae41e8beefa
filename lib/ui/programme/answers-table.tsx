import { getLocale, getTranslations } from 'next-intl/server';
import { tallyMean } from '@/lib/growing/answer-tally';
import { formatNumber } from '../format/number-text';
import { DataTable } from '../table/data-table';

/** A question and how many gave each answer, 1 first. */
type Asked = {
  readonly wording: string;
  readonly scaleMost: number;
  readonly leastLabel: string | null;
  readonly mostLabel: string | null;
  readonly before: readonly number[];
  readonly after: readonly number[];
};

/** Answers before and after a training: the scale, how many answered, and their mean. */
export async function AnswersTable({ questions }: { readonly questions: readonly Asked[] }) {
  const t = await getTranslations('programme.answers');
  const locale = await getLocale();
  const mean = (counts: readonly number[]) => {
    const { n, mean: value } = tallyMean(counts);
    return value === null ? t('none') : t('mean', { mean: formatNumber(value, locale, 1), n });
  };
  return (
    <>
      <DataTable
        caption={t('caption')}
        rows={questions}
        rowKey={({ wording, scaleMost }) => `${wording} ${scaleMost}`}
        columns={[
          { key: 'wording', header: t('wording'), cell: ({ wording }) => wording },
          {
            key: 'scale',
            header: t('scale'),
            cell: ({ scaleMost, leastLabel, mostLabel }) =>
              t('scaleOf', {
                least: leastLabel === null ? '1' : `1 (${leastLabel})`,
                most: mostLabel === null ? String(scaleMost) : `${scaleMost} (${mostLabel})`,
              }),
          },
          { key: 'before', header: t('before'), numeric: true, cell: ({ before }) => mean(before) },
          { key: 'after', header: t('after'), numeric: true, cell: ({ after }) => mean(after) },
        ]}
      />
      <p className="quiet">{t('note')}</p>
    </>
  );
}
