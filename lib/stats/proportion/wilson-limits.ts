/**
 * Wilson's score limits for `events` of `trials`, which may be fractional effective sizes, at the normal quantile
 * z: (x + z^2/2 -+ z sqrt(x (n - x) / n + z^2 / 4)) / (n + z^2). Exactly 0 at no events and 1 at all events.
 *
 * The lower limit is written as x^2 / n over the sum, which is the same number without the subtraction.
 */
export function wilsonLimits(events: number, trials: number, z: number): { low: number; high: number } {
  const failures = trials - events;
  const root = z * Math.sqrt(events * (failures / trials) + (z * z) / 4);
  const half = (z * z) / 2;
  return {
    low: (events * (events / trials)) / (events + half + root),
    high: 1 - (failures * (failures / trials)) / (failures + half + root),
  };
}
