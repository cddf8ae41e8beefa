import { grouped } from '../programme/grouped';
import { fewestOthers } from './fewest-others';

/** An amount for 10 kg of dry material, and how many batches wrote it down; null where none did. */
export type PerTenKilograms = { readonly amount: number; readonly batches: number } | null;

/** What a method took, per 10 kg of dry material, of batches that wrote it down. */
export type MethodCost = {
  /** Whose batches: the site's own, or all that wrote it down where it has none (three sites at least). */
  readonly of: 'site' | 'network' | 'nobody';
  readonly currency: string;
  readonly labourMinutes: PerTenKilograms;
  readonly fuelMinor: PerTenKilograms;
  readonly waterMinor: PerTenKilograms;
  readonly waterLitres: PerTenKilograms;
  /** Everything together; work only where an hour has a value. */
  readonly fullMinor: PerTenKilograms;
};

/** One batch as far as its costs are written down. */
export type CostedDryBatch = {
  readonly siteId: string;
  readonly method: string;
  readonly dryGrams: number;
  readonly labourMinutes: number | null;
  readonly fuelMinor: number | null;
  readonly waterMinor: number | null;
  readonly waterLitres: number | null;
  readonly fullMinor: number | null;
};

const parts = ['labourMinutes', 'fuelMinor', 'waterMinor', 'waterLitres', 'fullMinor'] as const;

const tenKilograms = 10_000;

/** What each method took at each site. */
export type MethodCosts = (method: string, siteId: string) => MethodCost;

/** The site's own amounts where it wrote anything down, else those of all sites that did: each from enough of them. */
export function methodCosts(batches: readonly CostedDryBatch[], currency: string): MethodCosts {
  const told = grouped(
    batches.filter((one) => parts.some((part) => one[part] !== null)),
    ({ method }) => method,
  );
  const byPlace = new Map(
    [...told].map(([method, some]) => [
      method,
      { all: amountsOf(some, fewestOthers), bySite: grouped(some, ({ siteId }) => siteId) },
    ]),
  );
  return (method, siteId) => {
    const { all, bySite } = byPlace.get(method) ?? { all: amountsOf([], fewestOthers), bySite: undefined };
    const own = bySite?.get(siteId);
    if (own !== undefined) return { of: 'site', currency, ...amountsOf(own, 1) };
    const known = Object.values(all).some((amount) => amount !== null);
    return { of: known ? 'network' : 'nobody', currency, ...all };
  };
}

type Amounts = Omit<MethodCost, 'of' | 'currency'>;

function amountsOf(batches: readonly CostedDryBatch[], fewestSites: number): Amounts {
  return {
    labourMinutes: perTen(batches, 'labourMinutes', fewestSites),
    fuelMinor: perTen(batches, 'fuelMinor', fewestSites),
    waterMinor: perTen(batches, 'waterMinor', fewestSites),
    waterLitres: perTen(batches, 'waterLitres', fewestSites),
    fullMinor: perTen(batches, 'fullMinor', fewestSites),
  };
}

function perTen(
  batches: readonly CostedDryBatch[],
  part: (typeof parts)[number],
  fewest: number,
): PerTenKilograms {
  const known = batches.flatMap((one) => {
    const amount = one[part];
    return amount === null ? [] : [{ siteId: one.siteId, amount, dryGrams: one.dryGrams }];
  });
  if (new Set(known.map(({ siteId }) => siteId)).size < fewest) return null;
  const dryGrams = known.reduce((sum, one) => sum + one.dryGrams, 0);
  if (dryGrams === 0) return null;
  const amount = known.reduce((sum, one) => sum + one.amount, 0);
  return { amount: (amount * tenKilograms) / dryGrams, batches: known.length };
}
