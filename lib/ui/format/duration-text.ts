import { formatNumber } from './number-text';

/**
 * A length of time in at most two units, the same in every language: 35 is "35 min", 65 "1 h 5 min", 3000 "2 d 2 h".
 * Minutes are rounded down; negative ones count as none.
 */
export function formatDuration(minutes: number, locale: string): string {
  const whole = Math.max(0, Math.floor(minutes));
  const unit = (count: number, name: string) => `${formatNumber(count, locale, 0)}\u00a0${name}`;
  const join = (...parts: readonly [number, string][]) =>
    parts
      .filter(
        ([count], index) => count > 0 || (index === parts.length - 1 && parts.every(([one]) => one === 0)),
      )
      .map(([count, name]) => unit(count, name))
      .join('\u00a0');
  if (whole < 60) return unit(whole, 'min');
  const hours = Math.floor(whole / 60);
  if (hours < 48) return join([hours, 'h'], [whole % 60, 'min']);
  return join([Math.floor(hours / 24), 'd'], [hours % 24, 'h']);
}
