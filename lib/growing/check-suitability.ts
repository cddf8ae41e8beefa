import type { LocalText } from './local-text';
import type { MaterialSuitability, MethodSuitability, SuitabilityVerdict } from './species-default';
import type { MaterialKind, MethodKind } from './vocabulary';

/** Whether a material and a method go together whatever the species. */
export type MaterialMethodSuitability = {
  readonly material: MaterialKind;
  readonly method: MethodKind;
  readonly verdict: SuitabilityVerdict;
  readonly reason: LocalText;
};

/** The suitability rows of one species and of materials with methods, the network's own or the defaults. */
export type SuitabilityTable = {
  readonly materials: readonly MaterialSuitability[];
  readonly methods: readonly MethodSuitability[];
  readonly pairs: readonly MaterialMethodSuitability[];
};

/** A warning with its reason; never a refusal. */
export type SuitabilityWarning = {
  readonly subject: 'material' | 'method' | 'material-method';
  readonly verdict: Exclude<SuitabilityVerdict, 'suits'>;
  readonly reason: LocalText;
};

/**
 * Warnings for a species, material and method chosen together, each with its reason. A material or method that the
 * table does not list gives no warning. On logs the method row is not asked: they are never treated.
 */
export function checkSuitability(
  table: SuitabilityTable,
  material: MaterialKind | null,
  method: MethodKind | null,
): readonly SuitabilityWarning[] {
  const warnings: SuitabilityWarning[] = [];
  const ofMaterial = table.materials.find((row) => row.material === material);
  if (ofMaterial && ofMaterial.verdict !== 'suits') {
    warnings.push({ subject: 'material', verdict: ofMaterial.verdict, reason: ofMaterial.reason });
  }
  const ofMethod = material === 'log_wood' ? undefined : table.methods.find((row) => row.method === method);
  if (ofMethod && ofMethod.verdict !== 'suits') {
    warnings.push({ subject: 'method', verdict: ofMethod.verdict, reason: ofMethod.reason });
  }
  const pair = table.pairs.find((row) => row.material === material && row.method === method);
  if (pair && pair.verdict !== 'suits') {
    warnings.push({ subject: 'material-method', verdict: pair.verdict, reason: pair.reason });
  }
  return warnings;
}
