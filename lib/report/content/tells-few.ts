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

/** Sums of one table as rows of amounts, one a site, in the order of the sites. */
type Table = { readonly keys: readonly string[]; readonly rows: readonly Float64Array[] };

/** Some sums added up. `amounts` is written over when the next union is asked for. */
type Union = { readonly keys: () => string; readonly amounts: Float64Array };

const tableOf = (sums: readonly GroundSum[], sites: readonly string[]): Table => ({
  keys: sums.map(({ key }) => key),
  rows: sums.map(({ bySite }) => Float64Array.from(sites, (site) => bySite[site] ?? 0)),
});

function addTo(amounts: Float64Array, row: Float64Array | undefined, times: 1 | -1): void {
  row?.forEach((amount, at) => {
    amounts[at] = (amounts[at] ?? 0) + times * amount;
  });
}

/** Every combination, each by one row more or less than the one before (a Gray code). */
function* everyUnion({ keys, rows }: Table, sites: number): Generator<Union> {
  const amounts = new Float64Array(sites);
  let mask = 0;
  for (let step = 1; step < 2 ** rows.length; step += 1) {
    const at = 31 - Math.clz32(step & -step);
    mask ^= 1 << at;
    addTo(amounts, rows[at], (mask >> at) & 1 ? 1 : -1);
    const members = mask;
    yield { keys: () => keys.filter((_, one) => (members >> one) & 1).join('\n'), amounts };
  }
}

/** What can be added up from the known sums of a table: every combination, or of a long table single ones, all, and all but one. */
function* unionsOf(table: Table, sites: number, everyOne: boolean): Generator<Union> {
  if (everyOne) {
    yield* everyUnion(table, sites);
    return;
  }
  const { keys, rows } = table;
  const all = rows.map((_, at) => at);
  if (all.length === 0) return;
  for (const members of [
    all,
    ...all.map((at) => [at]),
    ...all.map((left) => all.filter((at) => at !== left)),
  ]) {
    const amounts = new Float64Array(sites);
    for (const at of members) addTo(amounts, rows[at], 1);
    yield { keys: () => members.map((at) => keys[at]).join('\n'), amounts };
  }
}

/** Grams and cents are whole; what is smaller than this is rounding. */
const rounding = 1e-6;

export function sameSum(one: GroundSum, other: GroundSum): boolean {
  const sites = new Set([...Object.keys(one.bySite), ...Object.keys(other.bySite)]);
  return [...sites].every(
    (site) => Math.abs((one.bySite[site] ?? 0) - (other.bySite[site] ?? 0)) <= rounding,
  );
}

export const isNothing = (amounts: Float64Array) => amounts.every((amount) => Math.abs(amount) <= rounding);

/** Whether amounts by site are what few sites did; nothing at all tells nothing. */
export function amountsTell(amounts: Float64Array, rule: ProtectionRule): boolean {
  let [sites, total, most, second] = [0, 0, 0, 0];
  for (const amount of amounts) {
    const size = Math.abs(amount);
    if (size <= rounding) continue;
    sites += 1;
    total += size;
    if (size > most) [most, second] = [size, most];
    else if (size > second) second = size;
  }
  if (sites === 0) return false;
  return sites < rule.minSites || (100 * (most + second)) / total >= rule.topTwoPercent;
}

/** Whether one union less another is left with what few sites did. */
function differenceTells(one: Union, other: Union, rule: ProtectionRule, sameCells: boolean): boolean {
  let [sites, total, most, second] = [0, 0, 0, 0];
  for (let at = 0; at < one.amounts.length; at += 1) {
    const apart = Math.abs((one.amounts[at] ?? 0) - (other.amounts[at] ?? 0));
    if (apart <= rounding) continue;
    sites += 1;
    total += apart;
    if (apart > most) [most, second] = [apart, most];
    else if (apart > second) second = apart;
    if (sites === rule.minSites && !(sameCells && one.keys() === other.keys())) return false;
  }
  if (sites === 0) return false;
  return sites < rule.minSites || (100 * (most + second)) / total >= rule.topTwoPercent;
}

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
  const sites = [...new Set([...first, ...second].flatMap(({ bySite }) => Object.keys(bySite)))];
  const [ones, others] = [tableOf(first, sites), tableOf(second, sites)];
  for (const one of unionsOf(ones, sites.length, everyOne))
    for (const other of unionsOf(others, sites.length, everyOne))
      if (differenceTells(one, other, rule, sameCells)) return true;
  return false;
}
