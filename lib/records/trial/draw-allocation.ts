import { createHash } from 'node:crypto';

export type DrawnSlot = {
  readonly siteId: string;
  /** Place of the arm in the plan, from 1. */
  readonly arm: number;
  readonly block: number;
  /** Order at the site, from 1. */
  readonly place: number;
};

/**
 * Which arm each treatment run of each site gets, by permuted blocks: every block of a site holds every arm once, in an
 * order drawn for that block. The order is that of the SHA-256 of "seed site block arm" in hexadecimal, so that the same
 * seed gives the same list to anybody who can compute that sum, today or in ten years.
 */
export function drawAllocation(
  seed: string,
  sites: readonly { readonly id: string; readonly code: string }[],
  arms: number,
  blocks: number,
): DrawnSlot[] {
  return sites.flatMap(({ id, code }) =>
    Array.from({ length: blocks }, (_, block) =>
      drawnOrder(`${seed} ${code} ${block + 1}`, arms).map((arm, at) => ({
        siteId: id,
        arm,
        block: block + 1,
        place: block * arms + at + 1,
      })),
    ).flat(),
  );
}

function drawnOrder(start: string, arms: number): number[] {
  const sum = (arm: number) => createHash('sha256').update(`${start} ${arm}`).digest('hex');
  return Array.from({ length: arms }, (_, index) => index + 1)
    .map((arm) => ({ arm, sum: sum(arm) }))
    .sort((a, b) => (a.sum < b.sum ? -1 : 1))
    .map(({ arm }) => arm);
}
