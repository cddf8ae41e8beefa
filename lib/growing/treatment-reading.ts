import type { ReadingPlace } from './vocabulary';

/** One temperature reading of a treatment run, degrees Celsius, at a UTC instant. */
export type TemperatureReading = {
  readonly at: Date;
  readonly place: ReadingPlace;
  readonly celsius: number;
};

/** One pH reading of a lime bath, with the water's temperature at that time if it was read. */
export type PhReading = { readonly at: Date; readonly ph: number; readonly waterCelsius: number | null };

/** Minutes from one instant to another, negative when `to` is earlier. */
export function minutesBetween(from: Date, to: Date): number {
  return (to.getTime() - from.getTime()) / 60_000;
}

/** The instant some minutes after another. */
export function addMinutes(instant: Date, minutes: number): Date {
  return new Date(instant.getTime() + minutes * 60_000);
}
