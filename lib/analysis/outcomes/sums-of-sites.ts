import { addTo, cellAt, perCell, runsAt, type SiteSums } from './cell-sums';
import { methodOfCode } from './method-codes';
import { NearCounts } from './near-codes';
import type { CountedSum, OutcomeSums } from './outcome-sums';
import { type MethodTotal, type NearRuns, type NetworkTotal, sumsOfTotals } from './sums-of-totals';

/** What counts of a site's batches of one method: where there is something to divide by, batches count. */
function countedOf(
  site: string,
  method: string,
  numbers: readonly number[],
  cell: number,
  into: CountedSum[],
): void {
  const of = (column: keyof typeof cellAt) => numbers[cell + cellAt[column]] ?? 0;
  // Units, dry mass, area and log-days are above 0.
  const units = of('contaminationUnits');
  if (units > 0)
    into.push([site, method, 'contamination', of('contaminated'), units, of('contaminatedLater'), 0, 0]);
  const [fresh, open, cropped] = [of('fresh'), of('openUnits'), of('croppedOpenUnits')];
  if (of('yieldOver') > 0 || open > 0)
    into.push([site, method, 'yield', fresh, of('yieldOver'), 0, open, of('openUnitDays')]);
  // What did not crop gave nothing, so both have the same fresh mass.
  if (of('croppedOver') > 0 || cropped > 0)
    into.push([site, method, 'cropped', fresh, of('croppedOver'), 0, cropped, of('croppedOpenUnitDays')]);
  if (of('lifeDry') > 0) into.push([site, method, 'life', of('lifeFresh'), of('lifeDry'), 0, 0, 0]);
}

function methodTotal(method: string, numbers: readonly number[]): MethodTotal {
  const of = (column: keyof typeof cellAt) => numbers[cellAt[column]] ?? 0;
  return [
    method,
    ...[of('contaminationBatches'), of('contaminationUnits'), of('contaminatedLater'), of('lostClean')],
    ...[of('yieldBatches'), of('yieldUnits'), of('freshLater')],
    ...[of('croppedBatches'), of('croppedUnits'), of('croppedLater'), of('lifeBatches'), of('lifeUnits')],
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
  const methods = new Map<string, number[]>();
  const near = new NearCounts();
  for (const [site, own] of sites) {
    let batches = 0;
    for (let place = 0; place < own.methods.length; place += 1) {
      const method = methodOfCode(own.methods[place] ?? -1);
      if (!wanted(method)) continue;
      const cell = place * perCell;
      batches += own.numbers[cell + cellAt.batches] ?? 0;
      countedOf(site, method, own.numbers, cell, counted);
      let total = methods.get(method);
      if (total === undefined) {
        total = new Array<number>(perCell).fill(0);
        methods.set(method, total);
      }
      for (let at = 0; at < perCell; at += 1) addTo(total, at, own.numbers[cell + at] ?? 0);
    }
    if (batches > 0) present.push(site);
    near.add(own.near);
  }
  return sumsOfTotals({
    network: network.filter(([method]) => wanted(method)),
    sites: { counted, present },
    methods: [...methods].map(([method, total]) => methodTotal(method, total)),
    near: near.classes(wanted),
    runs: [...methods].map(([method, total]): NearRuns => [method, ...total.slice(runsAt, perCell)]),
  });
}
