import { getLocale, getTranslations } from 'next-intl/server';
import type { ShownFigure } from '@/lib/analysis/shown-figure';
import type { MassUnit } from '@/lib/database/generated/enums';
import { formatMass } from '@/lib/growing/format-quantity';
import type { BatchPage } from '@/lib/records/batch/get-batch.query';
import { formatDate } from '../format/date-text';
import { formatNumber } from '../format/number-text';
import { formatPercent } from '../format/percent-text';
import { formatBedYield, formatLogMass } from '../format/yield-text';

type Block = {
  readonly label: string;
  readonly value: string;
  readonly known: boolean;
  readonly details: string[];
};
type Props = {
  readonly page: BatchPage /** Contamination rate by the window's end, once judged. */;
  readonly rate: ShownFigure | undefined;
  readonly unit: MassUnit;
};

/** Makes the four figures of a batch in words: contaminated, fresh, yield, days. */
async function loadBlocks({ page, rate, unit }: Props): Promise<Block[]> {
  const t = await getTranslations('batches.figures');
  const reasons = await getTranslations('vocabulary.cannotReason');
  const locale = await getLocale();
  const { batch, figures } = page;
  const mass = (grams: number) => formatMass(grams, unit, locale);
  const percent = (value: number) => formatPercent(value, locale);
  const open = batch.closedOn === null;

  const contamination = (): Block => {
    const { units, contamination: outcome } = figures;
    const label = t(batch.containerKind === 'bed' ? 'bedFailed' : 'contaminated');
    const details: string[] = [];
    let count = units.contaminated;
    if (outcome.kind === 'cannot-compute') details.push(reasons(outcome.reason));
    else if (outcome.value.kind === 'inspected') {
      count = outcome.value.contaminatedByWindowEnd;
      const any = outcome.value.contaminatedAtAnyTime;
      if (rate?.kind === 'figure' && rate.interval.kind === 'interval' && batch.containerKind !== 'bed') {
        const { low, high } = rate.interval;
        details.push(t('interval', { percent: percent(rate.value), low: percent(low), high: percent(high) }));
      }
      details.push(t('byWindow', { date: formatDate(outcome.value.windowEnd, locale), any }));
    } else {
      const key = outcome.value.kind === 'window-open' ? 'windowOpen' : 'notInspected';
      details.push(t(key, { date: formatDate(outcome.value.windowEnd, locale) }));
    }
    if (units.moved > 0) details.push(t('moved', { count: units.moved }));
    if (units.lost > 0) details.push(t('lost', { count: units.lost }));
    if (batch.containerKind !== 'bed') details.push(t('live', { count: units.live }));
    return { label, value: t('ofUnits', { count, total: units.inoculated }), known: true, details };
  };

  const fresh = (): Block => ({
    label: t('fresh'),
    value: mass(figures.freshGrams),
    known: true,
    details: [
      t('weighings', { count: figures.weighings }),
      ...figures.flushes.map(({ flush, grams, sharePercent }) =>
        t('flush', { flush, mass: mass(grams), percent: formatPercent(sharePercent, locale, 0) }),
      ),
    ],
  });

  const plain = (
    label: string,
    answer: typeof figures.bedYield,
    write: (value: number) => string,
  ): Block[] =>
    answer === null
      ? []
      : answer.kind === 'value'
        ? [{ label, value: write(answer.value), known: true, details: open ? [t('beSoFar')] : [] }]
        : [{ label, value: t('cannot'), known: false, details: [reasons(answer.reason)] }];

  const efficiency = (): Block => {
    const { be } = figures;
    if (be.kind === 'cannot-compute')
      return { label: t('be'), value: t('cannot'), known: false, details: [reasons(be.reason)] };
    const { freshGrams, dryGrams, bePercent } = be.value;
    return {
      label: t('be'),
      value: percent(bePercent),
      known: true,
      details: [
        t('beDenominator', { fresh: mass(freshGrams), dry: mass(dryGrams) }),
        ...(batch.dryAssumed ? [t('assumed')] : []),
        ...(open ? [t('beSoFar')] : []),
      ],
    };
  };

  const { sinceInoculation, toFirstHarvest, toLastHarvest } = figures.days;
  return [
    contamination(),
    fresh(),
    ...plain(t('bedYield'), figures.bedYield, (value) => formatBedYield(value, unit, locale)),
    ...plain(t('logYield'), figures.logYield, (value) =>
      t('perLogYear', { mass: formatLogMass(value, unit, locale) }),
    ),
    ...(batch.containerKind === 'bed' || batch.secondLife ? [] : [efficiency()]),
    {
      label: t('days'),
      value: formatNumber(sinceInoculation, locale),
      known: true,
      details: [
        t(batch.secondLife ? (open ? 'daysOpenMoved' : 'daysClosedMoved') : open ? 'daysOpen' : 'daysClosed'),
        ...(toFirstHarvest === null || toLastHarvest === null
          ? []
          : [t('firstHarvest', { day: toFirstHarvest, last: toLastHarvest })]),
      ],
    },
  ];
}

/** The figures of a batch, large, each with what it rests on or why it cannot be worked out. */
export async function BatchFigures(props: Props) {
  const blocks = await loadBlocks(props);
  return (
    <div className="figure-row">
      {blocks.map((block) => (
        <div key={block.label} className="figure">
          <p className="figure-label">{block.label}</p>
          <p className={block.known ? 'figure-estimate' : 'figure-reason'}>{block.value}</p>
          {block.details.map((detail) => (
            <p key={detail} className="figure-detail quiet">
              {detail}
            </p>
          ))}
        </div>
      ))}
    </div>
  );
}
