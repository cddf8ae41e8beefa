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

/** The site's own amounts where it wrote anything down, else those of all sites that did: each from enough of them. */
export function methodCost(
  batches: readonly CostedDryBatch[],
  method: string,
  siteId: string,
  currency: string,
): MethodCost {
  const told = batches.filter((one) => one.method === method && parts.some((part) => one[part] !== null));
  const own = told.filter((one) => one.siteId === siteId);
  const some = own.length > 0 ? own : told;
  const enough = own.length > 0 ? 1 : fewestOthers;
  const amounts = {
    labourMinutes: perTen(some, 'labourMinutes', enough),
    fuelMinor: perTen(some, 'fuelMinor', enough),
    waterMinor: perTen(some, 'waterMinor', enough),
    waterLitres: perTen(some, 'waterLitres', enough),
    fullMinor: perTen(some, 'fullMinor', enough),
  };
  const known = Object.values(amounts).some((amount) => amount !== null);
  return { of: own.length > 0 ? 'site' : known ? 'network' : 'nobody', currency, ...amounts };
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
