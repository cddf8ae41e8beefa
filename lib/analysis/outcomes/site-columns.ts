import { keysOf, numbersOf } from './column-text';
import type { CountedSum, Measure } from './outcome-sums';

/** Sums of each site and method, as texts of the database's arrays, one a column and all in one order. */
export type SiteColumns = {
  readonly sites: string | null;
  readonly keys: string | null;
  readonly batches: string | null;
  readonly units: string | null;
  readonly contaminated: string | null;
  readonly contaminated_later: string | null;
  readonly fresh: string | null;
  readonly yield_over: string | null;
  readonly cropped_over: string | null;
  /** These of logs only. */
  readonly open_units: string | null;
  readonly open_unit_days: string | null;
  readonly cropped_open_units: string | null;
  readonly cropped_open_unit_days: string | null;
  readonly life_fresh: string | null;
  readonly life_dry: string | null;
};

type SiteSums = { readonly counted: readonly CountedSum[]; readonly present: readonly string[] };

/** Where a site has something to divide by it has batches that count: units, dry mass, area and log-days are above 0. */
export function siteColumns(columns: SiteColumns | undefined): SiteSums {
  if (!columns?.sites) return { counted: [], present: [] };
  const sites = keysOf(columns.sites);
  const keys = keysOf(columns.keys);
  const [batches, units, found] = [columns.batches, columns.units, columns.contaminated].map(numbersOf);
  const [later, fresh, over] = [columns.contaminated_later, columns.fresh, columns.yield_over].map(numbersOf);
  const [croppedOver, open, openDays] = [
    ...[columns.cropped_over, columns.open_units, columns.open_unit_days].map(numbersOf),
  ];
  const [croppedOpen, croppedOpenDays] = [
    ...[columns.cropped_open_units, columns.cropped_open_unit_days].map(numbersOf),
  ];
  const [lifeFresh, lifeDry] = [columns.life_fresh, columns.life_dry].map(numbersOf);
  const counted: CountedSum[] = [];
  const held = new Map<string, number>();
  sites.forEach((site, row) => {
    const key = keys[row] ?? '';
    const at = (column: readonly number[] | undefined) => column?.[row] ?? 0;
    held.set(site, (held.get(site) ?? 0) + at(batches));
    const add = (
      measure: Measure,
      numerator: number,
      over: number,
      more: readonly [number, number, number],
    ) => {
      if (over > 0 || more[1] > 0) counted.push([site, key, measure, numerator, over, ...more]);
    };
    add('contamination', at(found), at(units), [at(later), 0, 0]);
    add('yield', at(fresh), at(over), [0, at(open), at(openDays)]);
    // What did not crop gave nothing, so both have the same fresh mass.
    add('cropped', at(fresh), at(croppedOver), [0, at(croppedOpen), at(croppedOpenDays)]);
    add('life', at(lifeFresh), at(lifeDry), [0, 0, 0]);
  });
  return { counted, present: [...held].flatMap(([site, count]) => (count > 0 ? [site] : [])) };
}
