import { getLocale, getTranslations } from 'next-intl/server';
import type { LivesTogether } from '@/lib/analysis/single-batch/lives-together';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import { FigureCell } from '../figure/figure-cell';
import { loadFigureViews } from '../figure/load-figure-views';
import { DataTable } from '../table/data-table';

type Props = {
  readonly lives: readonly LivesTogether[];
  readonly unit: MassUnit;
  readonly timeZone: string;
};

/** First life, later lives and both together of each first batch; nothing of it is called biological efficiency. */
export async function LivesTable({ lives, unit, timeZone }: Props) {
  const t = await getTranslations('batches.lives');
  const locale = await getLocale();
  const view = await loadFigureViews(timeZone);
  const mass = (grams: number | null) => (grams === null ? t('unseen') : formatMass(grams, unit, locale));
  const marks = [...new Set(lives.flatMap((one) => view(one.perDryGramOfFirst).marks))];
  return (
    <section>
      <h2>{t('heading')}</h2>
      <p>{t('intro')}</p>
      <DataTable
        caption={t('caption')}
        rows={lives}
        rowKey={(one) => one.id}
        columns={[
          { key: 'code', header: t('columns.first'), cell: (one) => one.code },
          {
            key: 'firstLife',
            header: t('columns.firstLife'),
            numeric: true,
            cell: (one) => mass(one.firstGrams),
          },
          { key: 'later', header: t('columns.later'), numeric: true, cell: (one) => mass(one.laterGrams) },
          {
            key: 'together',
            header: t('columns.together'),
            numeric: true,
            cell: (one) => mass(one.togetherGrams),
          },
          {
            key: 'perDry',
            header: t('columns.perDry'),
            unit: '%',
            numeric: true,
            cell: (one) => <FigureCell view={view(one.perDryGramOfFirst)} />,
          },
        ]}
      />
      {marks.map((mark) => (
        <p key={mark} className="quiet">
          * {mark}
        </p>
      ))}
    </section>
  );
}
