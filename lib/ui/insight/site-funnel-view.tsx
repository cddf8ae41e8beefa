import type { FunnelLimit, SiteFunnel } from '@/lib/analysis/site-question/sites-answer';
import { PlotChart, type PlotLine } from '../chart/plot-chart';
import type { InsightWords } from './insight-words';

/** Sites among the limits for their number of units. The table of sites that follows has the same numbers. */
export function SiteFunnelView({ funnel, words }: { funnel: SiteFunnel; words: InsightWords }) {
  const { t, codeOf, number } = words;
  const most = Math.max(...funnel.limits.map(({ units }) => units));
  const line = (key: string, kind: PlotLine['kind'], of: (limit: FunnelLimit) => number): PlotLine => ({
    key,
    kind,
    points: funnel.limits.map((limit) => ({ x: limit.units, y: of(limit) })),
  });
  const beyond = funnel.places.filter(({ beyondUsual }) => beyondUsual !== null);
  return (
    <PlotChart
      title={t('sites.funnel')}
      reading={t('sites.funnelReading', { beyond: beyond.length })}
      unit="%"
      along={t('sites.funnelAlong')}
      from={0}
      to={most}
      alongTicks={[0, 0.5, 1].map((part) => ({
        at: Math.round(part * most),
        text: number(Math.round(part * most)),
      }))}
      lines={[
        line('low', 'limit', ({ low }) => low),
        line('high', 'limit', ({ high }) => high),
        line('usual low', 'far-limit', ({ usualLow }) => usualLow),
        line('usual high', 'far-limit', ({ usualHigh }) => usualHigh),
        line('centre', 'centre', () => funnel.targetPercent),
      ]}
      marks={funnel.places.map(({ siteId, units, percent, beyondUsual, beyondChance }) => ({
        key: siteId,
        x: units,
        y: percent,
        series: beyondUsual === null ? 0 : 1,
        ...(beyondChance === null ? {} : { label: codeOf(siteId) }),
      }))}
      note={t('sites.funnelNote')}
    />
  );
}
