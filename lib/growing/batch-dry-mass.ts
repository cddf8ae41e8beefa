import { type Answer, answer, cannotCompute } from './answer';
import { refuseNegative } from './in-range';
import { dryMatterFraction, wetBasisPercent } from './moisture-basis';
import type { ComponentRoleKind, DryMassOrigin, MoistureSource } from './vocabulary';

/** Moisture with where it comes from, percent wet basis; `percent` is null exactly when `source` is `none`. */
export type KnownMoisture = { readonly percent: number | null; readonly source: MoistureSource };

/** One substrate, supplement or additive weighed before treatment, with its lot's moisture as received. */
export type WeighedComponent = {
  readonly role: ComponentRoleKind;
  readonly grams: number | null;
  readonly asReceived: KnownMoisture;
};

export type BatchDryMass = {
  /** Whole grams: substrate + supplement, what BE divides by. */
  readonly dryGrams: number;
  /** Whole grams of the supplement in it; 0 when it was not weighed apart. */
  readonly drySupplementGrams: number;
  readonly origin: DryMassOrigin;
  /** True as soon as one moisture behind it was assumed. */
  readonly assumed: boolean;
};

/**
 * Dry mass from the filled wet mass and the batch's own moisture at filling.
 * Never with the lot's as-received moisture: 29.33 kg filled at 70 % is 8.80 kg dry, at the lot's 12 % it
 * would read 25.8. Spawn, gypsum and lime must not be in `filledWetGrams`.
 */
export function dryMassFromFilled(
  filledWetGrams: number | null,
  atFilling: KnownMoisture,
): Answer<BatchDryMass> {
  if (filledWetGrams === null) return cannotCompute('wet-mass-missing');
  if (atFilling.percent === null || atFilling.source === 'none') return cannotCompute('moisture-missing');
  const refused = refuseNegative({ filledWetGrams });
  if (refused) return refused;
  const moisture = wetBasisPercent(atFilling.percent);
  if (moisture.kind !== 'value') return moisture;
  return answer({
    dryGrams: Math.round(filledWetGrams * dryMatterFraction(moisture.value)),
    drySupplementGrams: 0,
    origin: 'filled_mass',
    assumed: atFilling.source === 'assumed',
  });
}

/**
 * Dry mass from what was weighed before treatment and each lot's as-received moisture. Additives are left out;
 * a substrate or supplement without mass or moisture makes the whole sum unknown, never smaller.
 */
export function dryMassFromComponents(components: readonly WeighedComponent[]): Answer<BatchDryMass> {
  const counted = components.filter((component) => component.role !== 'additive');
  if (!counted.some((component) => component.role === 'substrate')) return cannotCompute('no-components');
  let dry = 0;
  let supplement = 0;
  let assumed = false;
  for (const { role, grams, asReceived } of counted) {
    if (grams === null) return cannotCompute('mass-before-treatment-missing');
    if (asReceived.percent === null || asReceived.source === 'none') return cannotCompute('moisture-missing');
    const refused = refuseNegative({ grams });
    if (refused) return refused;
    const moisture = wetBasisPercent(asReceived.percent);
    if (moisture.kind !== 'value') return moisture;
    const part = grams * dryMatterFraction(moisture.value);
    dry += part;
    if (role === 'supplement') supplement += part;
    assumed ||= asReceived.source === 'assumed';
  }
  return answer({
    dryGrams: Math.round(dry),
    drySupplementGrams: Math.round(supplement),
    origin: 'mass_before_treatment',
    assumed,
  });
}
