import { z } from 'zod';
import type { Cell, ProtectedCell } from './protect-cells';
import { reportIndicators } from './report-indicators.input';

/** A sum that readers of a report know, and what each site gave to it. */
const groundSum = z.object({ key: z.string(), bySite: z.record(z.string(), z.number()) });

/** Parts of a report that are told or kept back as a whole. */
export const groundParts = ['glance', 'baseline', ...reportIndicators] as const;
export type GroundPart = (typeof groundParts)[number];

/** What the sums of a report were made of: by part, then by table. Coordinators alone may read it. */
export const reportGround = z.partialRecord(z.enum(groundParts), z.record(z.string(), z.array(groundSum)));

export type GroundSum = z.infer<typeof groundSum>;
export type GroundTables = Readonly<Record<string, readonly GroundSum[]>>;
export type ReportGround = Partial<Record<GroundPart, GroundTables>>;

/** Key of what a shown total tells about all the hidden cells together. */
export const hiddenKey = '(hidden)';

export function groundSumOf(key: string, bySite: ReadonlyMap<string, number>): GroundSum {
  return { key, bySite: Object.fromEntries(bySite) };
}

/** The sums that a protected table lets its readers know: each shown cell, and the hidden ones together once the total is shown. */
export function knownSums(
  table: { readonly total: ProtectedCell; readonly cells: readonly ProtectedCell[] },
  cells: readonly Cell[],
): GroundSum[] {
  const shown = new Set(table.cells.filter(({ kind }) => kind === 'shown').map(({ key }) => key));
  const known = cells.filter(({ key }) => shown.has(key)).map(({ key, bySite }) => groundSumOf(key, bySite));
  const hidden = cells.filter(({ key }) => !shown.has(key));
  if (table.total.kind === 'protected' || hidden.length === 0) return known;
  const together = new Map<string, number>();
  for (const { bySite } of hidden)
    for (const [site, amount] of bySite) together.set(site, (together.get(site) ?? 0) + amount);
  return [...known, groundSumOf(hiddenKey, together)];
}
