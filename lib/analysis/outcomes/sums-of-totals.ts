import type { LeftOutReason } from '../shown-figure';
import type { CountedSum, LeftOutSum, MarkedSum, Measure, OutcomeSums } from './outcome-sums';

type Key = string | null;
type Numbers = readonly (number | null)[];

/** A site's sums of one method, numbers in the order of the columns of `outcome_site_total`; may be negative. */
export type SiteTotal = readonly [siteId: string, methodKey: string, ...numbers: Numbers];

/** The network's sums of a class: batches, units, runs, run missing, trimmed, as picked, dry assumed, shared. */
export type NetworkTotal = readonly [
  methodKey: string,
  materialKey: string,
  measure: Measure,
  className: LeftOutReason | 'counted',
  ...numbers: Numbers,
];

/**
 * Batches alike in all that decides where they count. Numbers: batches and units within the period's ends, of those too
 * young for contamination, of those too young for yield; then marks (run missing, trimmed, as picked, dry assumed,
 * shared) of those that count for contamination, for yield, and of those within.
 */
export type NearClass = readonly [
  methodKey: string,
  materialKey: string,
  contaminationClass: string,
  yieldClass: string,
  cropped: boolean,
  lifeClass: Key,
  ...numbers: Numbers,
];

/** Treatment runs to add to those of the totals: of contamination, yield, cropped and life. */
export type NearRuns = readonly [methodKey: string, ...numbers: Numbers];

export type Totals = {
  readonly sites: readonly SiteTotal[];
  readonly network: readonly NetworkTotal[];
  readonly near: readonly NearClass[];
  readonly runs: readonly NearRuns[];
};

const measures = ['contamination', 'yield', 'cropped', 'life'] as const satisfies readonly Measure[];

/** Of a site's numbers: batches, units, numerator, denominator, later, lost clean, open units, open unit days. */
const places: Readonly<Record<Measure, readonly number[]>> = {
  contamination: [1, 2, 3, 2, 4, 5],
  // What did not crop gave nothing, so both have the same fresh mass.
  yield: [6, 7, 8, 9, 10, -1, 11, 12],
  cropped: [13, 14, 8, 15, 16, -1, 17, 18],
  life: [19, 20, 21, 22],
};

class Sums {
  readonly rows = new Map<string, { readonly of: readonly string[]; readonly numbers: number[] }>();

  add(of: readonly string[], numbers: Numbers): void {
    const key = of.join(' ');
    const row = this.rows.get(key) ?? { of, numbers: [] };
    this.rows.set(key, row);
    numbers.forEach((number, at) => {
      row.numbers[at] = (row.numbers[at] ?? 0) + (number ?? 0);
    });
  }

  /** Rows of at least one batch. */
  present() {
    return [...this.rows.values()].filter(({ numbers: [batches = 0] }) => batches > 0);
  }
}

function countedSums(sites: readonly SiteTotal[]): { counted: CountedSum[]; present: string[] } {
  const [bySite, byMethod] = [new Sums(), new Sums()];
  for (const [site, method, ...numbers] of sites) {
    bySite.add([site], numbers.slice(0, 1));
    byMethod.add([site, method], numbers);
  }
  const counted: CountedSum[] = [];
  for (const { of, numbers } of byMethod.rows.values()) {
    const [site = '', method = ''] = of;
    for (const measure of measures) {
      const at = (column: number) => numbers[places[measure][column] ?? -1] ?? 0;
      if (at(0) > 0)
        counted.push([site, method, measure, at(0), at(1), at(2), at(3), at(4), at(5), at(6), at(7)]);
    }
  }
  return { counted, present: bySite.present().flatMap(({ of }) => of) };
}

/** One row per class of the batches near today and at the period's ends, as the network's totals have them. */
function spread(near: readonly NearClass[], into: Sums): void {
  for (const [method, material, contamination, given, cropped, life, ...numbers] of near) {
    const at = (place: number) => numbers[place] ?? 0;
    const [batches, units, young, youngUnits] = [at(0), at(1), at(2), at(3)] as const;
    const [unripe, unripeUnits] = [at(4), at(5)] as const;
    const marks = (place: number) => numbers.slice(6 + 5 * place, 11 + 5 * place);
    const add = (measure: Measure, reason: string, counts: Numbers) =>
      into.add([method, material, measure, reason], counts);
    add('contamination', contamination, [batches - young, units - youngUnits, 0, ...marks(0)]);
    add('contamination', 'window-open', [young, youngUnits]);
    add('yield', given, [batches - unripe, units - unripeUnits, 0, ...marks(1)]);
    add('yield', 'window-open', [unripe, unripeUnits]);
    if (cropped) add('cropped', 'counted', [batches - unripe, units - unripeUnits, 0, ...marks(1)]);
    if (life !== null) add('life', life, [batches, units, 0, ...marks(2)]);
  }
}

/** The sums that a comparison is made of, out of totals of sites and of the network and the batches not in them. */
export function sumsOfTotals({ sites, network, near, runs }: Totals): OutcomeSums {
  const classes = new Sums();
  for (const [method, material, measure, className, ...numbers] of network)
    classes.add([method, material, measure, className], numbers);
  spread(near, classes);
  const [said, leftOut] = [new Sums(), new Sums()];
  const materials = new Map<string, string[]>();
  for (const { of, numbers } of classes.present()) {
    const [method = '', material = '', measure = '', className = ''] = of;
    if (className !== 'counted') leftOut.add([method, measure, className], numbers.slice(0, 2));
    else {
      said.add([method, measure], numbers.slice(2));
      const key = `${method} ${measure}`;
      materials.set(key, [...(materials.get(key) ?? []), material]);
    }
  }
  for (const [method, ...numbers] of runs)
    measures.forEach((measure, at) => {
      if (materials.has(`${method} ${measure}`)) said.add([method, measure], [numbers[at] ?? 0]);
    });
  const { counted, present } = countedSums(sites);
  return {
    counted,
    // Keys are those that went in above.
    marked: [...said.rows].map(([key, { of, numbers }]): MarkedSum => {
      const at = (place: number) => numbers[place] ?? 0;
      return [
        ...([of[0] ?? '', of[1] as Measure] as const),
        ...([at(0), at(1), at(2), at(3), at(4), at(5)] as const),
        materials.get(key) ?? [],
      ];
    }),
    leftOut: leftOut.present().map(({ of, numbers }): LeftOutSum => {
      return [of[0] ?? '', of[1] as Measure, of[2] as LeftOutReason, numbers[0] ?? 0, numbers[1] ?? 0];
    }),
    sites: present,
  };
}
