import type { FigureUnit } from '@/lib/analysis/shown-figure';
import type { MassUnit } from '@/lib/database/generated/enums';
import type { ContainerKind } from '@/lib/growing/vocabulary';

/** Which measure of yield a container has: BE for bags and the like, kg per m2 for beds, g per log and year for logs. */
export function yieldKind(container: ContainerKind): 'be' | 'bed' | 'log' {
  return container === 'bed' || container === 'log' ? container : 'be';
}

/** The unit in which the analysis gives each measure. */
export const yieldFigureUnit = {
  be: 'percent',
  bed: 'kilograms-per-square-metre',
  log: 'grams-per-log-year',
} as const satisfies Record<ReturnType<typeof yieldKind>, FigureUnit>;

/** The catalogue's key of the unit a reader sees above a column of yields. */
export function yieldUnitKey(
  container: ContainerKind,
  mass: MassUnit,
): 'be' | 'bed' | 'log' | 'bedLb' | 'logLb' {
  const kind = yieldKind(container);
  if (mass === 'kg' || kind === 'be') return kind;
  return kind === 'bed' ? 'bedLb' : 'logLb';
}
