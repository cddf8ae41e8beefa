import { costOfMass, costOfMinutes } from './share-out';

/** What a full cost is made of. `treatment-…`: of the runs, this batch's share. */
export const costParts = [
  'substrate',
  'spawn',
  'labour',
  'supplies',
  'fuel',
  'water',
  'treatment-labour',
  'treatment-supplies',
  'treatment-fuel',
  'treatment-water',
] as const;
export type CostPart = (typeof costParts)[number];

/** So much of a lot, and what the lot cost; null where either is not known. */
export type BoughtMass = {
  readonly grams: number | null;
  readonly price: { readonly paidMinor: number; readonly forGrams: number } | null;
};

/** Minutes of work and whole minor units; null was not recorded, 0 says that there was none. */
export type RecordedCosts = {
  readonly labourMinutes: number | null;
  readonly suppliesMinor: number | null;
  readonly fuelMinor: number | null;
  readonly waterMinor: number | null;
};

export type CostFacts = {
  readonly substrates: readonly BoughtMass[];
  readonly spawns: readonly BoughtMass[];
  readonly own: RecordedCosts;
  /** This batch's share of each run that treated it; empty where nothing was treated. */
  readonly treatments: readonly RecordedCosts[];
};

export type BatchCost =
  | {
      readonly kind: 'full';
      /** Everything but work, and work too where an hour has a value. */
      readonly minor: number;
      readonly labourMinutes: number;
    }
  /** A sum would silently leave these out, so there is none. */
  | { readonly kind: 'missing'; readonly parts: readonly CostPart[] };

const columns = [
  ['labour', 'labourMinutes'],
  ['supplies', 'suppliesMinor'],
  ['fuel', 'fuelMinor'],
  ['water', 'waterMinor'],
] as const;

/** What a batch cost in all, or which parts nobody wrote down. `labourMinorPerHour` null: work stays in minutes. */
export function batchCost(facts: CostFacts, labourMinorPerHour: number | null): BatchCost {
  const missing = new Set<CostPart>();
  let minor = 0;
  let labourMinutes = 0;
  const buy = (part: 'substrate' | 'spawn', bought: readonly BoughtMass[]) => {
    for (const { grams, price } of bought) {
      // What was given for nothing costs nothing, however much of it there was.
      if (price?.paidMinor === 0) continue;
      if (grams === null || price === null) missing.add(part);
      else minor += costOfMass(grams, price.paidMinor, price.forGrams);
    }
  };
  const add = (costs: RecordedCosts, prefix: '' | 'treatment-') => {
    for (const [part, column] of columns) {
      const value = costs[column];
      if (value === null) missing.add(`${prefix}${part}`);
      else if (part === 'labour') labourMinutes += value;
      else minor += value;
    }
  };
  buy('substrate', facts.substrates);
  buy('spawn', facts.spawns);
  add(facts.own, '');
  for (const run of facts.treatments) add(run, 'treatment-');
  if (missing.size > 0) return { kind: 'missing', parts: costParts.filter((part) => missing.has(part)) };
  const labour = labourMinorPerHour === null ? 0 : costOfMinutes(labourMinutes, labourMinorPerHour);
  return { kind: 'full', minor: minor + labour, labourMinutes };
}
