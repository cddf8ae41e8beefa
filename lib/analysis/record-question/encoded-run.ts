import type { ReadingPlace } from '@/lib/growing/vocabulary';

/** A treatment run as the database's JSON gives it; instants in milliseconds since 1970. */
export type EncodedRun = readonly [
  id: string,
  code: string,
  siteId: string,
  timeZone: string,
  methodId: string,
  startedAt: number,
  endedAt: number | null,
  loadCelsiusAtSpawning: number | null,
  readings:
    | readonly (readonly [at: number, place: ReadingPlace, celsius: number | null, ph: number | null])[]
    | null,
  firstFilledOn: string | null,
];
