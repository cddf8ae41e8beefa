import type { CountedBatch } from '../adjusted/contamination-request';
import type { WhyRawDiffers } from './methods-answer';

/** A difference below this, in percentage points, is "much the same". Our choice. */
const worthTelling = 1;
/** How far apart on the logit the company two methods keep must be to be the reason. Our choice: odds a tenth apart. */
const worthNaming = 0.1;
const sitesNamed = 3;

export type Company = {
  readonly batches: readonly CountedBatch[];
  readonly siteLogits: ReadonlyMap<string, number>;
  readonly lotLogits: ReadonlyMap<string, number>;
};

/**
 * Why the raw difference (first minus second, points) is another than the adjusted one: the sites or the spawn lots that the
 * two methods met, whichever lies further apart in the direction that explains it. Null where raw and adjusted agree.
 */
export function whyRawDiffers(
  first: string,
  second: string,
  rawPoints: number,
  adjustedPoints: number,
  { batches, siteLogits, lotLogits }: Company,
): WhyRawDiffers | null {
  const hidden = rawPoints - adjustedPoints;
  if (Math.abs(hidden) < worthTelling) return null;
  const mean = (method: string, of: (batch: CountedBatch) => number) => {
    const own = batches.filter(({ methodKey }) => methodKey === method);
    const units = own.reduce((sum, batch) => sum + batch.units, 0);
    return own.reduce((sum, batch) => sum + batch.units * of(batch), 0) / units;
  };
  const apart = (of: (batch: CountedBatch) => number) => mean(first, of) - mean(second, of);
  const siteOf = ({ siteId }: CountedBatch) => siteLogits.get(siteId) ?? 0;
  const sites = apart(siteOf);
  const lots = apart(({ spawnLot }) => lotLogits.get(spawnLot) ?? 0);
  const explains = (difference: number) =>
    Math.sign(difference) === Math.sign(hidden) && Math.abs(difference) >= worthNaming;
  if (explains(sites) && (!explains(lots) || Math.abs(sites) >= Math.abs(lots))) {
    // The method whose sites lie further from typical is the one to name.
    const [of, other] = [mean(first, siteOf), mean(second, siteOf)];
    const method = Math.abs(of) >= Math.abs(other) ? first : second;
    const sitesLose = (method === first ? of : other) < 0 ? 'less' : 'more';
    return { kind: 'sites', method, sitesLose, siteIds: sitesOf(method, sitesLose, batches, siteLogits) };
  }
  if (explains(lots)) return { kind: 'lots', method: first, lotsLose: lots < 0 ? 'less' : 'more' };
  return null;
}

/** The sites that use the method most among those that lose less (or more) than a typical one. */
function sitesOf(
  method: string,
  lose: 'less' | 'more',
  batches: readonly CountedBatch[],
  siteLogits: ReadonlyMap<string, number>,
): string[] {
  const counts = new Map<string, number>();
  for (const { siteId, methodKey } of batches) {
    const logit = siteLogits.get(siteId) ?? 0;
    if (methodKey === method && logit < 0 === (lose === 'less'))
      counts.set(siteId, (counts.get(siteId) ?? 0) + 1);
  }
  return [...counts]
    .sort(([a, some], [b, others]) => others - some || (a < b ? -1 : 1))
    .slice(0, sitesNamed)
    .map(([siteId]) => siteId);
}
