/** Days for which signals can be listed: four weeks, three months, a year. */
export const watchPeriods = [28, 91, 365] as const;
export type WatchPeriod = (typeof watchPeriods)[number];

/** The period that an address asks for; four weeks when it asks for none of them. */
export function watchPeriod(asked: string | string[] | undefined): WatchPeriod {
  return watchPeriods.find((days) => String(days) === asked) ?? 28;
}
