import type { KnownMoisture } from './batch-dry-mass';
import type { MethodKind } from './vocabulary';

/** A substrate or supplement with what is known about its moisture, percent wet basis. */
export type MoistComponent = {
  readonly grams: number | null;
  readonly massStage: 'before_treatment' | 'filled';
  readonly asReceived: KnownMoisture;
  /** Default after treatment by this method and draining; null where there is none. */
  readonly drainedPercent: number | null;
  readonly methodKind: MethodKind;
};

/** Only an untreated material is filled as moist as it came; a soaked one never is. */
function atFillingPercent(component: MoistComponent): number | null {
  if (component.drainedPercent !== null) return component.drainedPercent;
  return component.methodKind === 'untreated' ? component.asReceived.percent : null;
}

/** Dry and wet grams of a component once filled; null when its mass or a moisture is unknown. */
function filledParts(component: MoistComponent, percent: number): { wet: number; dry: number } | null {
  const { grams, massStage, asReceived } = component;
  if (grams === null) return null;
  if (massStage === 'filled') return { wet: grams, dry: grams * (1 - percent / 100) };
  if (asReceived.percent === null) return null;
  const dry = grams * (1 - asReceived.percent / 100);
  return { wet: dry / (1 - percent / 100), dry };
}

/**
 * Moisture to assume at filling, percent wet basis to a hundredth: the default of material x method after
 * draining, else, for an untreated material, its moisture as received. A mix is weighed by the components'
 * masses: water over total, not the mean of the percentages. Null when a default or a mass is missing.
 */
export function assumedMoisturePercent(components: readonly MoistComponent[]): number | null {
  const percents = components.map(atFillingPercent);
  const [first] = percents;
  if (first === undefined || first === null) return null;
  if (percents.every((percent) => percent === first)) return first;
  let wet = 0;
  let dry = 0;
  for (const [index, component] of components.entries()) {
    const percent = percents[index];
    if (percent === undefined || percent === null) return null;
    const parts = filledParts(component, percent);
    if (parts === null) return null;
    wet += parts.wet;
    dry += parts.dry;
  }
  return Number(((100 * (wet - dry)) / wet).toFixed(2));
}
