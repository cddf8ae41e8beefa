import type { Method } from '@/lib/database/generated/client';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';
import { windowOfMethod } from '@/lib/growing/window-of-method';

/** The window of a method as the network has set it; what the network does not set keeps its default. */
export function methodWindow(method: Method): TreatmentWindow | null {
  const number = (value: { toNumber(): number } | null) => value?.toNumber() ?? null;
  return windowOfMethod({
    kind: method.kind,
    minCelsius: number(method.minCelsius),
    maxCelsius: number(method.maxCelsius),
    minPh: number(method.minPh),
    minMinutes: method.minMinutes,
    maxMinutes: method.maxMinutes,
  });
}
