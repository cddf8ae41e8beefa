import type { Method } from '@/lib/database/generated/client';
import { methodDefaults } from '@/lib/growing/method-defaults';
import type { TreatmentWindow } from '@/lib/growing/treatment-window';

const minutesPerDay = 1440;

/** The window of a method as the network has set it; what the network does not set keeps its default. */
export function methodWindow(method: Method): TreatmentWindow | null {
  const base = methodDefaults.find((one) => one.kind === method.kind)?.window ?? null;
  if (base === null) return null;
  const number = (value: { toNumber(): number } | null) => value?.toNumber() ?? null;
  switch (base.kind) {
    case 'heat':
      return {
        ...base,
        lowCelsius: number(method.minCelsius) ?? base.lowCelsius,
        highCelsius: number(method.maxCelsius) ?? base.highCelsius,
        minMinutes: method.minMinutes ?? base.minMinutes,
        maxMinutes: method.maxMinutes ?? base.maxMinutes,
      };
    case 'lime':
      return {
        ...base,
        minPh: number(method.minPh) ?? base.minPh,
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
