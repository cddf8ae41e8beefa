import type { LeftOutReason } from '../shown-figure';
import type { CountedSum, LeftOutSum, MarkedSum, Measure, OutcomeSums } from './outcome-sums';

/** A site's total of one method over whole years and quarters, in the order of the columns of `outcome_site_total`. */
export type SiteTotal = readonly [siteId: string, methodKey: string, ...numbers: number[]];

/** A network's total: batches, units, runs, run missing, trimmed, as picked, dry assumed, shared. */
export type NetworkTotal = readonly [
  methodKey: string,
  materialKey: string,
  measure: Measure,
  className: LeftOutReason | 'counted',
  ...numbers: number[],
];

/** What is added or taken off besides: numbers of the sums, then those of what is said of batches. */
export type RecentPart = readonly [
  siteId: string,
  methodKey: string,
  materialKey: string,
  measure: Measure,
  className: LeftOutReason | 'counted',
  ...numbers: number[],
];

/** Where each number of a counted sum stands among the numbers of a site's total; undefined is 0. */
const columns: Readonly<Record<Measure, readonly (number | undefined)[]>> = {
  // batches, units, numerator, denominator, later, lost clean, open units, open unit days
  contamination: [1, 2, 3, 2, 4, 5, undefined, undefined],
  yield: [6, 7, 8, 9, 10, undefined, 11, 12],
  // What did not crop gave nothing, so both have the same fresh mass.
  cropped: [13, 14, 8, 15, 16, undefined, 17, 18],
  life: [19, 20, 21, 22, undefined, undefined, undefined, undefined],
};
const measures: readonly Measure[] = ['contamination', 'yield', 'cropped', 'life'];

function addTo(sums: Map<string, number[]>, key: string, numbers: readonly number[]): void {
  const own = sums.get(key);
  if (own === undefined) sums.set(key, [...numbers]);
  else
    numbers.forEach((value, at) => {
      own[at] = (own[at] ?? 0) + value;
    });
}

/** The sums that a comparison is made of, out of totals of sites and of the network and what is not in them. */
export function sumsOfTotals(
  siteTotals: readonly SiteTotal[],
  networkTotals: readonly NetworkTotal[],
  recent: readonly RecentPart[],
): OutcomeSums {
  const counted = new Map<string, number[]>();
  const classes = new Map<string, number[]>();
  const atSites = new Map<string, number>();
  for (const [site, method, ...numbers] of siteTotals) {
    atSites.set(site, (atSites.get(site) ?? 0) + (numbers[0] ?? 0));
    for (const measure of measures) {
      const own = columns[measure].map((at) => (at === undefined ? 0 : (numbers[at] ?? 0)));
      if (own[0] !== 0) addTo(counted, `${site} ${method} ${measure}`, own);
    }
  }
  for (const [method, material, measure, className, ...numbers] of networkTotals)
    addTo(classes, `${method} ${measure} ${className} ${material}`, numbers);
  for (const [site, method, material, measure, className, ...numbers] of recent) {
    const [batches = 0, units = 0] = numbers;
    if (measure === 'contamination') atSites.set(site, (atSites.get(site) ?? 0) + batches);
    if (className === 'counted') addTo(counted, `${site} ${method} ${measure}`, numbers.slice(0, 8));
    addTo(classes, `${method} ${measure} ${className} ${material}`, [batches, units, ...numbers.slice(8)]);
  }
  const marked = new Map<string, { numbers: number[]; materials: string[] }>();
  const leftOut = new Map<string, number[]>();
  for (const [key, numbers] of classes) {
    if ((numbers[0] ?? 0) <= 0) continue;
    const [method = '', measure = '', className = '', material = ''] = key.split(' ');
    if (className !== 'counted') {
      addTo(leftOut, `${method} ${measure} ${className}`, numbers.slice(0, 2));
      continue;
    }
    const own = marked.get(`${method} ${measure}`) ?? { numbers: [0, 0, 0, 0, 0, 0], materials: [] };
    marked.set(`${method} ${measure}`, {
      numbers: own.numbers.map((value, at) => value + (numbers[at + 2] ?? 0)),
      materials: [...own.materials, material],
    });
  }
  // Keys are made above of parts without spaces, and the numbers are in the order that the types name.
  return {
    counted: [...counted].flatMap(([key, numbers]) =>
      (numbers[0] ?? 0) > 0 ? [[...key.split(' '), ...numbers] as unknown as CountedSum] : [],
    ),
    marked: [...marked].map(
      ([key, { numbers, materials }]) => [...key.split(' '), ...numbers, materials] as unknown as MarkedSum,
    ),
    leftOut: [...leftOut].map(([key, numbers]) => [...key.split(' '), ...numbers] as unknown as LeftOutSum),
    sites: [...atSites].flatMap(([site, batches]) => (batches > 0 ? [site] : [])),
  };
}
