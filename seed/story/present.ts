import type { MethodKind } from '@/lib/growing/vocabulary';

/** A treatment that runs, or has just ended, at the moment the demo is made; minutes before that moment. */
export type PresentRun = {
  readonly siteCode: string;
  readonly method: MethodKind;
  readonly startedAgo: number;
  readonly endedAgo: number | null;
  readonly readings: readonly {
    readonly ago: number;
    readonly celsius: number | null;
    readonly ph: number | null;
  }[];
};

const warm = (ago: number, celsius: number) => ({ ago, celsius, ph: null });

export const presentRuns: readonly PresentRun[] = [
  {
    siteCode: 'MILL',
    method: 'hot_water_bath',
    startedAgo: 80,
    endedAgo: null,
    readings: [warm(75, 20), warm(60, 55), warm(45, 70), warm(28, 71.5), warm(12, 69.8)],
  },
  {
    siteCode: 'MILL',
    method: 'cold_lime_soak',
    startedAgo: 325,
    endedAgo: null,
    readings: [
      { ago: 310, celsius: 17, ph: 12.45 },
      { ago: 60, celsius: 18, ph: 12.4 },
    ],
  },
  {
    siteCode: 'QUARR',
    method: 'cold_ferment',
    startedAgo: 9 * 1440,
    endedAgo: null,
    readings: [warm(8 * 1440, 14), warm(6 * 1440, 15.5), warm(3 * 1440, 13)],
  },
  {
    // It fell out of its window half way, so its last stretch counts alone.
    siteCode: 'QUARR',
    method: 'hot_water_bath',
    startedAgo: 300,
    endedAgo: 150,
    readings: [
      warm(290, 20),
      warm(270, 68),
      warm(255, 70),
      warm(240, 58),
      warm(220, 69),
      warm(200, 70),
      warm(152, 69),
    ],
  },
];

/** A place with a logger that writes once an hour: its mean and how far it swings within a day. */
export type PresentPlace = {
  readonly siteCode: string;
  readonly name: string;
  readonly celsius: { readonly mean: number; readonly swing: number };
  readonly humidity: { readonly mean: number; readonly swing: number };
  readonly carbonDioxide: { readonly mean: number; readonly swing: number };
};

/** Bags and the like go from the first place to the second once they pin or crop. */
export const presentPlaces: readonly PresentPlace[] = [
  {
    siteCode: 'MILL',
    name: 'Warm room',
    celsius: { mean: 23, swing: 1.5 },
    humidity: { mean: 72, swing: 5 },
    carbonDioxide: { mean: 2400, swing: 500 },
  },
  {
    siteCode: 'MILL',
    name: 'Fruiting tent',
    celsius: { mean: 17, swing: 3 },
    humidity: { mean: 90, swing: 5 },
    carbonDioxide: { mean: 850, swing: 200 },
  },
];

/** Days of the loggers before the moment the demo is made. */
export const loggerDays = 21;
