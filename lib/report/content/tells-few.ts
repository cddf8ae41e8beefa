import type { GroundSum } from './ground';
import type { ProtectionRule } from './protect-cells';

type Sums = ReadonlyMap<string, number>;

/** Up to so many sums of both tables together every combination is looked at; of more, the plain ones. */
const mostSums = 16;

/** Several sums added up, by site. */
export function unionOf(sums: readonly GroundSum[]): Sums {
  const all = new Map<string, number>();
  for (const { bySite } of sums)
    for (const [site, amount] of Object.entries(bySite)) all.set(site, (all.get(site) ?? 0) + amount);
  return all;
}

type Union = { readonly keys: string; readonly bySite: Sums };

const union = (sums: readonly GroundSum[]): Union => ({
  keys: sums.map(({ key }) => key).join('\n'),
  bySite: unionOf(sums),
});

/** What can be added up from the known sums of a table: every combination, or of a long table single ones, all, and all but one. */
function unionsOf(sums: readonly GroundSum[], everyOne: boolean): Union[] {
  if (sums.length === 0) return [];
  if (!everyOne) {
    const butOne = sums.map((left) => sums.filter((sum) => sum !== left));
    return [sums, ...sums.map((sum) => [sum]), ...butOne].map(union);
  }
  return Array.from({ length: 2 ** sums.length - 1 }, (_, mask) =>
    union(sums.filter((_sum, at) => ((mask + 1) >> at) & 1)),
  );
}

/** Grams and cents are whole; what is smaller than this is rounding. */
const rounding = 1e-6;

function differences(first: Sums, second: Sums): number[] {
  return [...new Set([...first.keys(), ...second.keys()])]
    .map((site) => Math.abs((first.get(site) ?? 0) - (second.get(site) ?? 0)))
    .filter((difference) => difference > rounding)
    .sort((a, b) => b - a);
}

export const sameSum = (one: GroundSum, other: GroundSum) =>
  differences(unionOf([one]), unionOf([other])).length === 0;

/**
 * Whether somebody who knows both lists of sums can subtract one from the other and is left with what few sites did: the
 * difference of any two unions has to be nothing at all, or come from at least the fewest sites that a cell may rest on.
 * Between two states of the same cells (`sameCells`) the two sites that changed most must not make up the change either.
 */
export function tellsFew(
  first: readonly GroundSum[],
  second: readonly GroundSum[],
  rule: ProtectionRule,
  sameCells: boolean,
): boolean {
  const everyOne = first.length + second.length <= mostSums;
  const others = unionsOf(second, everyOne);
  return unionsOf(first, everyOne).some((one) =>
    others.some((other) => {
      const apart = differences(one.bySite, other.bySite);
      if (apart.length === 0) return false;
      if (apart.length < rule.minSites) return true;
      if (!sameCells || one.keys !== other.keys) return false;
      const total = apart.reduce((sum, value) => sum + value, 0);
      const topTwo = (apart[0] ?? 0) + (apart[1] ?? 0);
      return (100 * topTwo) / total >= rule.topTwoPercent;
    }),
  );
}
