import { type Amounts, type Derived, derivedOf, type Place, placesOf, plus } from './day-graph';
import type { KnownStretch } from './known-stretches';
import type { ProtectionRule } from './protect-cells';
import { amountsTell, isNothing } from './tells-few';

/** So many combinations of three stretches are looked at; where there are more, nothing is proved and the sum is not told. */
const mostCombinations = 250_000;

type Signed = { readonly stretch: Derived; readonly times: 1 | -1 };

/** Whether stretches, added and subtracted, leave days once each and no day twice or less than not at all. */
function leavesDaysOnce(parts: readonly Signed[]): boolean {
  const steps = parts
    .flatMap(({ stretch, times }) => [
      { day: stretch.from, by: times },
      { day: stretch.until, by: -times },
    ])
    .sort((one, other) => (one.day < other.day ? -1 : one.day > other.day ? 1 : 0));
  let [now, least, most] = [0, 0, 0];
  for (const [at, { day, by }] of steps.entries()) {
    now += by;
    if (steps[at + 1]?.day === day) continue;
    least = Math.min(least, now);
    most = Math.max(most, now);
  }
  return most - least === 1;
}

function combinationTells(parts: readonly Signed[], rule: ProtectionRule): boolean {
  if (!leavesDaysOnce(parts)) return false;
  const [first, ...rest] = parts;
  if (!first) return false;
  return amountsTell(
    rest.reduce((sum, { stretch, times }) => plus(sum, stretch.amounts, times), first.stretch.amounts),
    rule,
  );
}

/** Stretches that follow only with the fresh one: between each day of the group it begins in and each of that it ends in. */
function newlyDerived(
  { from, until }: KnownStretch,
  amounts: Amounts,
  places: ReadonlyMap<string, Place>,
): Derived[] {
  const alone = (day: string): [string, Place][] => [[day, { group: -1, upTo: amounts.map(() => 0) }]];
  const groupOf = (day: string) => {
    const place = places.get(day);
    return place ? [...places].filter(([, { group }]) => group === place.group) : alone(day);
  };
  const [first, last] = [places.get(from), places.get(until)];
  const [start, end] = [first?.upTo, last?.upTo];
  // What was known of these days already tells nothing new.
  if (start && end && first?.group === last?.group && isNothing(plus(amounts, plus(end, start, -1), -1)))
    return [];
  return groupOf(from).flatMap(([one, begins]) =>
    groupOf(until).map(([other, ends]) => {
      const before = start ? plus(start, begins.upTo, -1) : begins.upTo;
      const after = end ? plus(ends.upTo, end, -1) : ends.upTo;
      const sum = plus(plus(amounts, before, 1), after, 1);
      return one < other
        ? { from: one, until: other, group: -1, amounts: sum }
        : { from: other, until: one, group: -1, amounts: sum.map((amount) => -amount) };
    }),
  );
}

/**
 * Whether somebody who knows the sums of other stretches of days can work out, with a fresh one, what few sites did on some
 * days: between any two days that stretches of any number join by their first and last days, and from any two or three of
 * such stretches that share none of these days but overlap. `known` begins with the latest.
 */
export function stretchTells(
  fresh: KnownStretch,
  known: readonly KnownStretch[],
  rule: ProtectionRule,
): boolean {
  if (known.length === 0) return false;
  const sites = [...new Set([fresh, ...known].flatMap(({ bySite }) => Object.keys(bySite)))];
  const amountsOf = ({ bySite }: KnownStretch) => Float64Array.from(sites, (site) => bySite[site] ?? 0);
  const places = placesOf(
    known.map((one) => ({ ...one, amounts: amountsOf(one) })),
    sites.length,
  );
  const derived = newlyDerived(fresh, amountsOf(fresh), places);
  // What a report may tell standing alone, its own table has judged: of methods by how many sites made the batches.
  const alone = ({ from, until }: Derived) => from === fresh.from && until === fresh.until;
  if (derived.some((one) => !alone(one) && amountsTell(one.amounts, rule))) return true;
  const joined = [places.get(fresh.from)?.group, places.get(fresh.until)?.group];
  const others = derivedOf(places).filter(({ group }) => !joined.includes(group));
  if ((derived.length * others.length ** 2) / 2 > mostCombinations) return true;
  return derived.some((stretch) => {
    const own: Signed = { stretch, times: 1 };
    return others.some((one, at) => {
      const less: Signed = { stretch: one, times: -1 };
      if (combinationTells([own, less], rule)) return true;
      return others.slice(at + 1).some((other) => {
        if (other.group === one.group) return false;
        const rest: Signed = { stretch: other, times: -1 };
        return (
          combinationTells([own, less, rest], rule) ||
          combinationTells([own, { ...less, times: 1 }, rest], rule) ||
          combinationTells([own, less, { ...rest, times: 1 }], rule)
        );
      });
    });
  });
}
