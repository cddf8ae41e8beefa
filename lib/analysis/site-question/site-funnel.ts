import { exactFunnelLimit, overdispersedFunnelLimit } from '@/lib/stats/watching/exact-funnel-limit';
import { type FunnelSite, funnel } from '@/lib/stats/watching/funnel';
import type { FunnelLimit, SiteFunnel } from './sites-answer';

const tail = 0.025;
const drawnLimits = 24;
/** With fewer sites there is nothing to tell from. */
const fewestSites = 3;

/**
 * Sites' raw rates against limits for their number of units: exact binomial ones (chance alone), and those that allow for how
 * sites usually differ (beta-binomial, the variance between sites from winsorised z-scores, Spiegelhalter 2005). With fewer
 * than 12 sites the second seldom calls anybody out. Null with fewer than three sites or without any variation.
 */
export function siteFunnel(sites: readonly FunnelSite[]): SiteFunnel | null {
  const answer = funnel(sites, { winsorise: 0.1 });
  if (answer.kind === 'cannot-compute' || answer.points.length < fewestSites) return null;
  const { target } = answer;
  const between = Math.min(answer.unshrunkBetweenVariance, 0.99 * target * (1 - target));
  const limitAt = (units: number): FunnelLimit => {
    const percent = (limit: number) => 100 * Math.min(1, Math.max(0, limit));
    return {
      units,
      low: percent(exactFunnelLimit(target, units, tail)),
      high: percent(exactFunnelLimit(target, units, 1 - tail)),
      usualLow: percent(overdispersedFunnelLimit(target, units, tail, between)),
      usualHigh: percent(overdispersedFunnelLimit(target, units, 1 - tail, between)),
    };
  };
  const beyond = (percent: number, low: number, high: number) =>
    percent > high ? ('above' as const) : percent < low ? ('below' as const) : null;
  const most = Math.max(...answer.points.map(({ units }) => units));
  // The lines begin where a small site would stand, so that they show how much wider they are there.
  const least = Math.min(Math.ceil(most / 30), ...answer.points.map(({ units }) => units));
  const drawn = Array.from({ length: drawnLimits }, (_, step) =>
    Math.round(least + ((most - least) * step) / (drawnLimits - 1)),
  );
  return {
    targetPercent: 100 * target,
    places: answer.points.map(({ label, events, units, proportion }) => {
      const limit = limitAt(units);
      const percent = 100 * proportion;
      return {
        siteId: label,
        events,
        units,
        percent,
        beyondChance: beyond(percent, limit.low, limit.high),
        beyondUsual: beyond(percent, limit.usualLow, limit.usualHigh),
      };
    }),
    limits: [...new Set(drawn)].map(limitAt),
  };
}
