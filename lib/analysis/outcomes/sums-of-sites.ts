import { type CellSums, noCell } from './cell-sums';
import type { SiteSums } from './near-batches';
import { NearCounts } from './near-codes';
import type { CountedSum, OutcomeSums } from './outcome-sums';
import { type MethodTotal, type NearRuns, type NetworkTotal, sumsOfTotals } from './sums-of-totals';

/** What counts of a site's batches of one method: where there is something to divide by, batches count. */
function countedOf(site: string, method: string, cell: CellSums, into: CountedSum[]): void {
  // Units, dry mass, area and log-days are above 0.
  if (cell.contaminationUnits > 0)
    into.push([
      ...([site, method, 'contamination', cell.contaminated, cell.contaminationUnits] as const),
      ...([cell.contaminatedLater, 0, 0] as const),
    ]);
  if (cell.yieldOver > 0 || cell.openUnits > 0)
    into.push([
      ...([site, method, 'yield', cell.fresh, cell.yieldOver, 0] as const),
      ...([cell.openUnits, cell.openUnitDays] as const),
    ]);
  // What did not crop gave nothing, so both have the same fresh mass.
  if (cell.croppedOver > 0 || cell.croppedOpenUnits > 0)
    into.push([
      ...([site, method, 'cropped', cell.fresh, cell.croppedOver, 0] as const),
      ...([cell.croppedOpenUnits, cell.croppedOpenUnitDays] as const),
    ]);
  if (cell.lifeDry > 0) into.push([site, method, 'life', cell.lifeFresh, cell.lifeDry, 0, 0, 0]);
}

function methodTotal(method: string, cell: CellSums): MethodTotal {
  return [
    method,
    ...[cell.contaminationBatches, cell.contaminationUnits, cell.contaminatedLater, cell.lostClean],
    ...[cell.yieldBatches, cell.yieldUnits, cell.freshLater],
    ...[cell.croppedBatches, cell.croppedUnits, cell.croppedLater, cell.lifeBatches, cell.lifeUnits],
  ];
}

/**
 * The sums that a comparison is made of, out of those of each site and the network's totals; with `only` those of one
 * method.
 */
export function sumsOfSites(
  sites: ReadonlyMap<string, SiteSums>,
  network: readonly NetworkTotal[],
  only: string | undefined,
): OutcomeSums {
  const wanted = (method: string) => only === undefined || only === method;
  const counted: CountedSum[] = [];
  const present: string[] = [];
  const methods = new Map<string, CellSums>();
  const near = new NearCounts();
  const runs = new Map<string, number[]>();
  for (const [site, own] of sites) {
    let batches = 0;
    for (const [method, cell] of own.cells) {
      if (!wanted(method)) continue;
      batches += cell.batches;
      countedOf(site, method, cell, counted);
      const total = methods.get(method) ?? noCell();
      methods.set(method, total);
      addAmounts(total, cell);
    }
    if (batches > 0) present.push(site);
    near.add(own.near);
    for (const [method, numbers] of own.runs) {
      if (!wanted(method)) continue;
      const sum = runs.get(method);
      if (sum === undefined) runs.set(method, [...numbers]);
      else addAll(sum, numbers);
    }
  }
  return sumsOfTotals({
    network: network.filter(([method]) => wanted(method)),
    sites: { counted, present },
    methods: [...methods].map(([method, cell]) => methodTotal(method, cell)),
    near: near.classes(wanted),
    runs: [...runs].map(([method, numbers]): NearRuns => [method, ...numbers]),
  });
}

function addAll(into: number[], numbers: readonly number[]): void {
  numbers.forEach((number, at) => {
    into[at] = (into[at] ?? 0) + number;
  });
}

/** Only what is said of a method at all sites together. */
function addAmounts(into: CellSums, cell: CellSums): void {
  into.contaminationBatches += cell.contaminationBatches;
  into.contaminationUnits += cell.contaminationUnits;
  into.contaminatedLater += cell.contaminatedLater;
  into.lostClean += cell.lostClean;
  into.yieldBatches += cell.yieldBatches;
  into.yieldUnits += cell.yieldUnits;
  into.freshLater += cell.freshLater;
  into.croppedBatches += cell.croppedBatches;
  into.croppedUnits += cell.croppedUnits;
  into.croppedLater += cell.croppedLater;
  into.lifeBatches += cell.lifeBatches;
  into.lifeUnits += cell.lifeUnits;
}
