import type { TreatmentWindow } from '@/lib/growing/treatment-window';

const minutesPerDay = 1440;

/** The limits of a treatment window as the columns that a network can change. */
export function methodWindowColumns(window: TreatmentWindow | null) {
  const none = {
    minCelsius: null,
    maxCelsius: null,
    minPh: null,
    maxPh: null,
    minMinutes: null,
    maxMinutes: null,
  };
  if (window === null) return none;
  switch (window.kind) {
    case 'heat':
      return {
        ...none,
        minCelsius: window.lowCelsius,
        maxCelsius: window.highCelsius,
        minMinutes: window.minMinutes,
        maxMinutes: window.maxMinutes,
      };
    case 'lime':
      return { ...none, minPh: window.minPh, minMinutes: window.minMinutes, maxMinutes: window.maxMinutes };
    case 'ferment':
      return {
        ...none,
        minMinutes: window.minDays * minutesPerDay,
        maxMinutes: window.maxDays * minutesPerDay,
      };
  }
}
