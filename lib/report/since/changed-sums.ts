import type { GroundPart, GroundSum, ReportGround } from '../content/ground';

/** What one site's part of a total was when the report was built, and is now. */
export type ChangedSum = {
  readonly part: GroundPart;
  readonly siteId: string;
  readonly earlier: number;
  readonly now: number;
};

const rounding = 1e-6;

/** Tables whose sums by site a coordinator can make sense of: grams fresh, grams dry. */
const told = [
  ['harvest', 'harvest'],
  ['residues', 'residues'],
] as const;

function bySite(sums: readonly GroundSum[]): Map<string, number> {
  const all = new Map<string, number>();
  for (const { bySite: amounts } of sums)
    for (const [site, amount] of Object.entries(amounts)) all.set(site, (all.get(site) ?? 0) + amount);
  return all;
}

/** Grams of each site in harvest and residues that differ from those that a report was built on. */
export function changedSums(earlier: ReportGround, now: ReportGround): ChangedSum[] {
  return told.flatMap(([part, table]) => {
    const before = bySite(earlier[part]?.[table] ?? []);
    const after = bySite(now[part]?.[table] ?? []);
    return [...new Set([...before.keys(), ...after.keys()])].flatMap((siteId) => {
      const [was, is] = [before.get(siteId) ?? 0, after.get(siteId) ?? 0];
      return Math.abs(was - is) > rounding ? [{ part, siteId, earlier: was, now: is }] : [];
    });
  });
}
