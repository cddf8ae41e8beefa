import { getLocale, getTranslations } from 'next-intl/server';
import type { TrialResultContent } from '@/lib/report/trial/trial-result-content';
import { FigureCell } from '../figure/figure-cell';
import type { FigureView } from '../figure/figure-view';
import { formatNumber } from '../format/number-text';
import { DataTable } from '../table/data-table';

type Props = {
  readonly which: 'asDrawn' | 'asPlanned';
  readonly content: TrialResultContent;
  readonly shown: (figure: { kind: string }) => FigureView;
};

/** Every arm with its runs, its outcome and its difference from the first one. */
export async function ComparisonTable({ which, content, shown }: Props) {
  const t = await getTranslations('trials.result');
  const locale = await getLocale();
  const { arms, contrasts } = content.answer[which];
  const against = (armId: string) => contrasts.find((contrast) => contrast.armId === armId);
  const chance = (p: number | null) =>
    p === null ? '–' : p < 0.001 ? t('pBelow') : formatNumber(p, locale, 3);
  return (
    <>
      <DataTable
        caption={t(which)}
        rows={arms}
        rowKey={({ armId }) => armId}
        columns={[
          {
            key: 'arm',
            header: t('columns.arm'),
            cell: ({ armId }) => content.arms.find(({ id }) => id === armId)?.label ?? '–',
          },
          {
            key: 'runs',
            header: t('columns.runs'),
            numeric: true,
            cell: ({ counted, planned }) =>
              `${formatNumber(counted, locale)} / ${formatNumber(planned, locale)}`,
          },
          {
            key: 'mean',
            header: t('columns.mean'),
            unit: '%',
            numeric: true,
            cell: ({ figure }) => <FigureCell view={shown(figure)} />,
          },
          {
            key: 'points',
            header: t('columns.points'),
            unit: t('pointsUnit'),
            numeric: true,
            cell: ({ armId }) => {
              const contrast = against(armId);
              return contrast === undefined ? t('first') : <FigureCell view={shown(contrast.points)} />;
            },
          },
          {
            key: 'p',
            header: t('columns.p'),
            numeric: true,
            cell: ({ armId }) => {
              const contrast = against(armId);
              return contrast === undefined ? '' : chance(contrast.pValue);
            },
          },
        ]}
      />
      <p className="quiet">{t(`${which}Note`)}</p>
    </>
  );
}
