import { saturatedLimePh } from './saturated-lime-ph';

/**
 * `impossible`: outside 0-14, refused. `above-saturation`: above what saturated lime water can have at that
 * temperature, a meter or entry error. `very-high`: the same suspicion without a temperature to judge by.
 * `below-window`: under-dosed, stale (carbonated) or dolomitic lime (common practice).
 */
export type PhQuestion =
  | { readonly code: 'impossible'; readonly limitPh: number }
  | { readonly code: 'above-saturation'; readonly limitPh: number }
  | { readonly code: 'very-high'; readonly limitPh: number }
  | { readonly code: 'below-window'; readonly limitPh: number };

/** pH above which a reading is questioned when the water's temperature is not known. */
export const veryHighPh = 13.5;

/**
 * The question a lime-bath reading raises, or null. With the water's temperature (0-50 C) the limit is saturation
 * there (HJ1147) + `aboveSaturationPh`: 12.66 at 25 C, 13.21 at 10 C with 0.2.
 */
export function questionPh(
  ph: number,
  waterCelsius: number | null,
  window: { readonly minPh: number; readonly aboveSaturationPh: number },
): PhQuestion | null {
  if (!(ph >= 0 && ph <= 14)) return { code: 'impossible', limitPh: ph > 14 ? 14 : 0 };
  const saturated = waterCelsius === null ? null : saturatedLimePh(waterCelsius);
  if (saturated?.kind === 'value') {
    const limitPh = saturated.value + window.aboveSaturationPh;
    if (ph > limitPh) return { code: 'above-saturation', limitPh };
  } else if (ph > veryHighPh) {
    return { code: 'very-high', limitPh: veryHighPh };
  }
  return ph < window.minPh ? { code: 'below-window', limitPh: window.minPh } : null;
}

/**
 * True for lime water with the US corrosivity characteristic (code D002, 40 CFR 261.22(a)(1)): aqueous waste of
 * pH 12.5 or more. Fresh saturated lime water is below it at 25 C (12.46) and above it at 20 C (12.64).
 */
export function isCorrosiveLimeWater(ph: number): boolean {
  return ph >= 12.5;
}
