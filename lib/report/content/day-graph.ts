import type { KnownStretch } from './known-stretches';

/** Amounts by site, in one order of the sites. */
export type Amounts = Float64Array;

/** A day at which a stretch begins or ends: its group, and the sum from the group's first such day up to it. */
export type Place = { readonly group: number; readonly upTo: Amounts };

/** A stretch that follows from what is known, by its first day and the day after its last. */
export type Derived = {
  readonly from: string;
  readonly until: string;
  readonly group: number;
  readonly amounts: Amounts;
};

export function plus(one: Amounts, other: Amounts, times: 1 | -1): Amounts {
  return one.map((amount, at) => amount + times * (other[at] ?? 0));
}

/**
 * Days joined by known stretches. Whoever knows the sums of stretches that have first or last days in common can work out
 * the sum between any two days of such a group, by adding and subtracting however many of them: a sum over days is a
 * difference of two places. Of several ways to a day the one by the stretches named first counts.
 */
export function placesOf(
  known: readonly (KnownStretch & { readonly amounts: Amounts })[],
  sites: number,
): Map<string, Place> {
  const places = new Map<string, Place>();
  const days = [...new Set(known.flatMap(({ from, until }) => [from, until]))].sort();
  for (const [group, first] of days.entries()) {
    if (places.has(first)) continue;
    places.set(first, { group, upTo: new Float64Array(sites) });
    const waiting = [first];
    for (let day = waiting.shift(); day !== undefined; day = waiting.shift()) {
      const here = places.get(day)?.upTo ?? new Float64Array(sites);
      for (const { from, until, amounts } of known) {
        const next = from === day ? until : until === day ? from : undefined;
        if (next === undefined || places.has(next)) continue;
        places.set(next, { group, upTo: plus(here, amounts, from === day ? 1 : -1) });
        waiting.push(next);
      }
    }
  }
  return places;
}

/** Every stretch between two days of one group. */
export function derivedOf(places: ReadonlyMap<string, Place>): Derived[] {
  const days = [...places].sort(([one], [other]) => (one < other ? -1 : 1));
  return days.flatMap(([from, start], at) =>
    days
      .slice(at + 1)
      .flatMap(([until, end]) =>
        end.group === start.group
          ? [{ from, until, group: end.group, amounts: plus(end.upTo, start.upTo, -1) }]
          : [],
      ),
  );
}
