import type { LeftOutReason } from '../shown-figure';
import type { AmountSum, CountedSum, LeftOutSum, MarkedSum, Measure, OutcomeSums } from './outcome-sums';

type Key = string | null;
type Numbers = readonly (number | null)[];

/**
 * What counts of a method at all sites. Of contamination: batches, units, contaminated later, lost clean; of yield and of
 * cropped: batches, units, weighed later; of life: batches, units.
 */
export type MethodTotal = readonly [methodKey: string, ...numbers: number[]];

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
  readonly sites: { readonly counted: readonly CountedSum[]; readonly present: readonly string[] };
  readonly methods: readonly MethodTotal[];
  readonly network: readonly NetworkTotal[];
  readonly near: readonly NearClass[];
  readonly runs: readonly NearRuns[];
};

const measures = ['contamination', 'yield', 'cropped', 'life'] as const satisfies readonly Measure[];

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

function amountsOf([method, ...numbers]: MethodTotal): AmountSum[] {
  const [batches = 0, units = 0, found = 0, lost = 0, ofYield = 0, yieldUnits = 0, weighed = 0] = numbers;
  const [cropped = 0, croppedUnits = 0, croppedLater = 0, lives = 0, lifeUnits = 0] = numbers.slice(7);
  const all: AmountSum[] = [
    [method, 'contamination', batches, units, found, lost],
    [method, 'yield', ofYield, yieldUnits, weighed, 0],
    [method, 'cropped', cropped, croppedUnits, croppedLater, 0],
    [method, 'life', lives, lifeUnits, 0, 0],
  ];
  return all.filter(([, , count]) => count > 0);
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
export function sumsOfTotals({ sites, methods, network, near, runs }: Totals): OutcomeSums {
  const classes = new Sums();
  for (const [method, material, measure, className, ...numbers] of network)
    classes.add([method, material, measure, className], numbers);
  spread(near, classes);
  const [said, leftOut] = [new Sums(), new Sums()];
  const materials = new Map<string, string[]>();
  for (const { of, numbers } of classes.rows.values()) {
    const [method = '', material = '', measure = '', className = ''] = of;
    const [batches = 0] = numbers;
    // Runs to take off again are told without their material: those of a material of which nothing is left are among them.
    if (className === 'counted') said.add([method, measure], numbers.slice(2));
    if (batches <= 0) continue;
    const key = `${method} ${measure}`;
    if (className === 'counted') materials.set(key, [...(materials.get(key) ?? []), material]);
    else leftOut.add([method, measure, className], numbers.slice(0, 2));
  }
  for (const [method, ...numbers] of runs)
    measures.forEach((measure, at) => {
      said.add([method, measure], [numbers[at] ?? 0]);
    });
  return {
    counted: sites.counted,
    amounts: methods.flatMap(amountsOf),
    // Keys are those that went in above.
    marked: [...said.rows].flatMap(([key, { of, numbers }]): MarkedSum[] => {
      const at = (place: number) => numbers[place] ?? 0;
      const present = materials.get(key);
      if (present === undefined) return [];
      const counts = [at(0), at(1), at(2), at(3), at(4), at(5)] as const;
      return [[...([of[0] ?? '', of[1] as Measure] as const), ...counts, present]];
    }),
    leftOut: leftOut.present().map(({ of, numbers }): LeftOutSum => {
      return [of[0] ?? '', of[1] as Measure, of[2] as LeftOutReason, numbers[0] ?? 0, numbers[1] ?? 0];
    }),
    sites: sites.present,
  };
}
