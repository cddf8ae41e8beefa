import { methodDefaults } from './method-defaults';
import type { TreatmentWindow } from './treatment-window';
import type { MethodKind } from './vocabulary';

const minutesPerDay = 1440;

/** What a network has set of a method's window; null keeps the default. Minutes also where the window counts days. */
export type MethodLimits = {
  readonly kind: MethodKind;
  readonly minCelsius: number | null;
  readonly maxCelsius: number | null;
  readonly minPh: number | null;
  readonly minMinutes: number | null;
  readonly maxMinutes: number | null;
};

/** The window of a method as the network has set it; null where there is nothing to check. */
export function windowOfMethod(method: MethodLimits): TreatmentWindow | null {
  const base = methodDefaults.find((one) => one.kind === method.kind)?.window ?? null;
  if (base === null) return null;
  switch (base.kind) {
    case 'heat':
      return {
        ...base,
        lowCelsius: method.minCelsius ?? base.lowCelsius,
        highCelsius: method.maxCelsius ?? base.highCelsius,
        minMinutes: method.minMinutes ?? base.minMinutes,
        maxMinutes: method.maxMinutes ?? base.maxMinutes,
      };
    case 'lime':
      return {
        ...base,
        minPh: method.minPh ?? base.minPh,
        minMinutes: method.minMinutes ?? base.minMinutes,
        maxMinutes: method.maxMinutes ?? base.maxMinutes,
      };
    case 'ferment':
      return {
        ...base,
        minDays: (method.minMinutes ?? base.minDays * minutesPerDay) / minutesPerDay,
        maxDays: (method.maxMinutes ?? base.maxDays * minutesPerDay) / minutesPerDay,
      };
  }
}
