import type { FunnelLimit, SiteFunnel } from '@/lib/analysis/site-question/sites-answer';
import { PlotChart, type PlotLine } from '../chart/plot-chart';
import { roundTicks } from '../chart/plot-scale';
import type { InsightWords } from './insight-words';

type Props = {
  readonly funnel: SiteFunnel;
  /** Sites that the answer names: their marks have a word before all others. */
  readonly named: ReadonlySet<string>;
  readonly words: InsightWords;
};

/** Sites among the limits for their number of units. The table of sites that follows has the same numbers. */
export function SiteFunnelView({ funnel, named, words }: Props) {
  const { t, codeOf, number } = words;
  const most = Math.max(...funnel.limits.map(({ units }) => units));
  const line = (key: string, kind: PlotLine['kind'], of: (limit: FunnelLimit) => number): PlotLine => ({
    key,
    kind,
    points: funnel.limits.map((limit) => ({ x: limit.units, y: of(limit) })),
  });
  const count = (key: 'beyondChance' | 'beyondUsual') =>
    funnel.places.filter((place) => place[key] !== null).length;
  const namedFirst = funnel.places.toSorted(
    (a, b) => Number(named.has(b.siteId)) - Number(named.has(a.siteId)),
  );
  return (
    <PlotChart
      title={t('sites.funnel')}
      reading={t('sites.funnelReading', { chance: count('beyondChance'), beyond: count('beyondUsual') })}
      unit="%"
      along={t('sites.funnelAlong')}
      from={0}
      to={most}
      alongTicks={roundTicks(most).map((at) => ({ at, text: number(at) }))}
      lines={[
        line('low', 'limit', ({ low }) => low),
        line('high', 'limit', ({ high }) => high),
        line('usual low', 'far-limit', ({ usualLow }) => usualLow),
        line('usual high', 'far-limit', ({ usualHigh }) => usualHigh),
        line('centre', 'centre', () => funnel.targetPercent),
      ]}
      marks={namedFirst.map(({ siteId, units, percent, beyondUsual, beyondChance }) => ({
        key: siteId,
        x: units,
        y: percent,
        series: beyondUsual === null ? 0 : 1,
        ...(beyondChance !== null || named.has(siteId) ? { label: codeOf(siteId) } : {}),
      }))}
      note={t('sites.funnelNote')}
    />
  );
}
