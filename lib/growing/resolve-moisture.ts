import type { KnownMoisture } from './batch-dry-mass';

/**
 * The moisture a batch or lot is given: the measured one, else the default marked as assumed, else none.
 * `fallback` must be of the same stage as the mass it will be used with: a material's as-received moisture for a mass
 * before treatment, its moisture after draining under that method for a filled mass.
 */
export function resolveMoisture(measured: number | null, fallback: number | null): KnownMoisture {
  if (measured !== null) return { percent: measured, source: 'measured' };
  if (fallback !== null) return { percent: fallback, source: 'assumed' };
  return { percent: null, source: 'none' };
}
